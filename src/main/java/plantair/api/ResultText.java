package plantair.api;

import java.util.List;
import java.util.stream.Collectors;
import plantair.pumpup.Figure;
import plantair.pumpup.Finding;
import plantair.pumpup.WorkingStep;
import plantair.quantity.Rounded;

/**
 * Stands in for the words of the test page, which testrecord does not offer yet: symbols and figures in SI only.
 */
final class ResultText {

    private static final int DIGITS = 6;

    private ResultText() {}

    static String of(Finding finding) {
        return finding.code() + figures(finding.figures());
    }

    static String of(WorkingStep step) {
        return step.label() + figures(step.figures());
    }

    private static String figures(List<Figure> figures) {
        return figures.stream()
                .map(figure -> " " + figure.symbol() + " = " + Rounded.significant(figure.si(), DIGITS))
                .collect(Collectors.joining(","));
    }
}
