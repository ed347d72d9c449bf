package plantair.testrecord.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.springframework.context.MessageSource;
import plantair.pumpup.Figure;
import plantair.pumpup.WorkingStep;
import plantair.quantity.FlowBasis;
import plantair.quantity.VesselVolume;
import plantair.web.QuantityFormat;
import plantair.web.UnitSet;

/**
 * The working of a test, step by step, in sections.
 *
 * @param title what the section is about
 * @param lines one step a line
 */
record WorkingView(String title, List<Line> lines) {

    /**
     * One step.
     *
     * @param equation its number in docs/method.md
     * @param text the equation with the numbers in it
     */
    record Line(String equation, String text) {}

    static List<WorkingView> of(List<WorkingStep> steps, UnitSet units, MessageSource messages, Locale locale) {
        List<WorkingView> sections = new ArrayList<>();
        var figures = new FigureText(units, QuantityFormat.working(units));
        String key = "";
        for (WorkingStep step : steps) {
            String itsKey = sectionKey(step, key);
            if (!itsKey.equals(key)) {
                key = itsKey;
                Object[] run = {step.run()};
                sections.add(new WorkingView(messages.getMessage(key, run, locale), new ArrayList<>()));
                key = step.run() == 0 ? key : key + step.run();
            }
            String text = messages.getMessage(
                    "working." + step.equation(), arguments(step, figures, units, messages, locale), locale);
            sections.get(sections.size() - 1)
                    .lines()
                    .add(new Line(step.equation().replaceAll("-.*", ""), text));
        }
        return sections;
    }

    private static String sectionKey(WorkingStep step, String current) {
        if (step.run() > 0) {
            return current.equals("working.run" + step.run()) ? current : "working.run";
        }
        return current.isEmpty() || current.equals("working.before") ? "working.before" : "working.after";
    }

    /** The label first, then the figures; a piece of volume in the vessel's own unit as well. */
    private static Object[] arguments(
            WorkingStep step, FigureText text, UnitSet units, MessageSource messages, Locale locale) {
        List<Object> arguments = new ArrayList<>();
        arguments.add(label(step, messages, locale));
        for (Figure figure : step.figures()) {
            arguments.add(text.working(figure));
            if (step.equation().startsWith("M2-")) {
                arguments.add(QuantityFormat.working(units).vessel(new VesselVolume(figure.si())));
            }
        }
        return arguments.toArray();
    }

    private static String label(WorkingStep step, MessageSource messages, Locale locale) {
        for (FlowBasis basis : FlowBasis.values()) {
            if (basis.name().equals(step.label())) {
                return messages.getMessage("basis." + basis.name(), null, locale);
            }
        }
        return step.label();
    }
}
