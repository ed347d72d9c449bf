package plantair.testrecord;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;
import plantair.pumpup.Figure;
import plantair.pumpup.Finding;
import plantair.pumpup.WorkingStep;
import plantair.quantity.FlowBasis;
import plantair.quantity.VesselVolume;
import plantair.web.QuantityFormat;
import plantair.web.UnitSet;

/** The sentences of findings and of the working, the same on every page and in every answer. */
@Component
public class ResultText {

    private final MessageSource messages;

    ResultText(MessageSource messages) {
        this.messages = messages;
    }

    /** A finding as a sentence. */
    public String finding(Finding finding, UnitSet units, Locale locale) {
        Object[] figures = new FigureText(units, QuantityFormat.of(units)).all(finding.figures());
        return messages.getMessage("finding." + finding.code(), figures, locale);
    }

    /** The number of a step's equation in docs/method.md. */
    public static String equation(WorkingStep step) {
        return step.equation().replaceAll("-.*", "");
    }

    /** A step of the working: the equation with the numbers in it. */
    public String working(WorkingStep step, UnitSet units, Locale locale) {
        QuantityFormat format = QuantityFormat.working(units);
        var text = new FigureText(units, format);
        List<Object> arguments = new ArrayList<>();
        arguments.add(label(step, locale));
        for (Figure figure : step.figures()) {
            arguments.add(text.working(figure));
            if (step.equation().startsWith("M2-")) { // a piece of volume in the vessel's own unit as well
                arguments.add(format.vessel(new VesselVolume(figure.si())));
            }
        }
        return messages.getMessage("working." + step.equation(), arguments.toArray(), locale);
    }

    private String label(WorkingStep step, Locale locale) {
        for (FlowBasis basis : FlowBasis.values()) {
            if (basis.name().equals(step.label())) {
                return messages.getMessage("basis." + basis.name(), null, locale);
            }
        }
        return step.label();
    }
}
