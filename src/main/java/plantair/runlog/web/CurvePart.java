package plantair.runlog.web;

import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.TestPagePart;
import plantair.web.UnitSet;

/** Flow at the pressure of the rating on the page of a test, for the fragment {@code logs/_part}. */
@Component
final class CurvePart implements TestPagePart {

    private final CurveViews views;

    CurvePart(CurveViews views) {
        this.views = views;
    }

    @Override
    public String attribute() {
        return "curve";
    }

    @Override
    public CurveView of(PumpUpTest test, UnitSet units) {
        return views.brief(test, units, LocaleContextHolder.getLocale());
    }
}
