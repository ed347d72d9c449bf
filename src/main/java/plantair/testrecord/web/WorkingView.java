package plantair.testrecord.web;

import java.util.ArrayList;
import java.util.List;
import plantair.pumpup.WorkingStep;
import plantair.testrecord.ResultText;

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

    static List<WorkingView> of(List<WorkingStep> steps, ResultText text, ResultWords words) {
        List<WorkingView> sections = new ArrayList<>();
        String section = "";
        for (WorkingStep step : steps) {
            String its = section(step, section);
            if (!its.equals(section)) {
                sections.add(new WorkingView(title(step, its, words), new ArrayList<>()));
                section = its;
            }
            String line = text.working(step, words.units(), words.locale());
            sections.get(sections.size() - 1).lines().add(new Line(ResultText.equation(step), line));
        }
        return sections;
    }

    private static String section(WorkingStep step, String current) {
        if (step.run() > 0) {
            return "working.run" + step.run();
        }
        return current.isEmpty() || current.equals("working.before") ? "working.before" : "working.after";
    }

    private static String title(WorkingStep step, String section, ResultWords words) {
        return step.run() > 0 ? words.say("working.run", step.run()) : words.say(section);
    }
}
