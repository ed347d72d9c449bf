package plantair.guided.web;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import plantair.guided.MachineFigures;

/** The readings of a machine in words, as typed. */
@Component
class FigureWords {

    private final MessageSource messages;

    FigureWords(MessageSource messages) {
        this.messages = messages;
    }

    /** A name and what was read. */
    record Line(String name, String value) {}

    List<Line> of(MachineFigures figures) {
        List<Line> lines = new ArrayList<>();
        add(lines, "guided.hours", figures.hours());
        add(lines, "guided.loadedHours", figures.loadedHours());
        add(lines, "guided.current1", figures.current1());
        add(lines, "guided.current2", figures.current2());
        add(lines, "guided.current3", figures.current3());
        add(lines, "guided.interstagePressure", figures.interstagePressure());
        add(lines, "guided.dischargeTemperature", figures.dischargeTemperature());
        add(lines, "guided.oilLevel", figures.oilLevel() == null ? null : say("guided.oil." + figures.oilLevel()));
        add(lines, "guided.filterDrop", figures.filterDrop());
        add(lines, "guided.separatorDrop", figures.separatorDrop());
        add(lines, "guided.belt", figures.belt() == null ? null : say("guided.belt." + figures.belt()));
        add(lines, "test.speed", figures.speed());
        add(lines, "guided.noise", figures.noise().isEmpty() ? null : figures.noise());
        return lines;
    }

    private void add(List<Line> lines, String key, @Nullable Object value) {
        if (value != null) {
            lines.add(new Line(say(key + ".label"), value.toString()));
        }
    }

    String say(String key, Object... args) {
        return messages.getMessage(key, args, LocaleContextHolder.getLocale());
    }
}
