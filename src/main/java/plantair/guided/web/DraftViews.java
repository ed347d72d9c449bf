package plantair.guided.web;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import plantair.equipment.Compressor;
import plantair.equipment.Compressors;
import plantair.guided.DraftContent;
import plantair.guided.StoredDraft;
import plantair.guided.StoredDraft.State;
import plantair.quantity.Entered;
import plantair.web.NoSuchRecord;

/** Two or more versions of a form side by side, where they differ. */
@Component
class DraftViews {

    private static final DateTimeFormatter LOCAL = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);
    private static final Pattern RUN = Pattern.compile("runs\\[(\\d+)\\]\\.(.*)");
    private static final Pattern CODE = Pattern.compile("[A-Z_]+");
    private static final Pattern PART = Pattern.compile("\\.(number|unit)$");

    private final Compressors compressors;
    private final MessageSource messages;

    DraftViews(Compressors compressors, MessageSource messages) {
        this.compressors = compressors;
        this.messages = messages;
    }

    /** The page. */
    record Comparison(
            String key,
            long machineId,
            String tag,
            @Nullable Long testId,
            boolean clashes,
            List<Version> versions,
            List<Row> rows) {}

    /** One version of the form. */
    record Version(int place, String savedAt, String device, boolean isFirst) {}

    /** A field and what each version says. */
    record Row(String name, List<String> values) {}

    Comparison compare(List<StoredDraft> all) {
        StoredDraft main = all.get(0);
        Compressor machine = compressors
                .findWithSiteById(main.compressorId())
                .orElseThrow(() -> new NoSuchRecord("compressor " + main.compressorId()));
        List<StoredDraft> shown = all.stream()
                .filter(draft -> draft == main || draft.state() == State.BESIDE)
                .toList();
        ZoneId zone = machine.site().facts().zoneId();
        return new Comparison(
                main.draftKey().toString(),
                machine.id(),
                machine.tag(),
                main.testId(),
                shown.size() > 1,
                shown.stream().map(draft -> version(draft, zone)).toList(),
                rows(shown.stream()
                        .map(draft -> DraftContent.fields(draft.content()))
                        .toList()));
    }

    private static Version version(StoredDraft draft, ZoneId zone) {
        Instant at = draft.savedAt();
        return new Version(draft.place(), at.atZone(zone).format(LOCAL), draft.device(), draft.place() == 0);
    }

    private List<Row> rows(List<Map<String, List<String>>> versions) {
        var names = new TreeSet<String>();
        versions.forEach(fields -> fields.keySet().stream()
                .map(name -> PART.matcher(name).replaceFirst(""))
                .forEach(names::add));
        return names.stream()
                .filter(name -> !name.equals("steps"))
                .map(name -> new Row(
                        label(name),
                        versions.stream().map(fields -> value(fields, name)).toList()))
                .filter(row -> row.values().stream().distinct().count() > 1)
                .toList();
    }

    private String value(Map<String, List<String>> fields, String name) {
        if (fields.containsKey(name)) {
            return fields.get(name).stream().map(value -> word(name, value)).collect(Collectors.joining("; "));
        }
        String number = String.join(", ", fields.getOrDefault(name + ".number", List.of()));
        String unit = String.join(", ", fields.getOrDefault(name + ".unit", List.of()));
        return number.isEmpty() ? "" : reading(number + " " + unit);
    }

    /** With the unit as people write it, where it is a reading at all. */
    private static String reading(String typed) {
        try {
            return Entered.parse(typed).toString();
        } catch (IllegalArgumentException noReading) {
            return typed;
        }
    }

    /** What the form calls a choice; anything else as it was typed. */
    private String word(String name, String value) {
        if (!CODE.matcher(value).matches()) {
            return value;
        }
        String last = name.substring(name.lastIndexOf('.') + 1);
        return Stream.of("guided.tick." + value, "guided." + last + "." + value, "test." + last + "." + value)
                .map(key -> messages.getMessage(key, null, "", LocaleContextHolder.getLocale()))
                .filter(text -> text != null && !text.isEmpty())
                .findFirst()
                .orElse(value);
    }

    private String label(String name) {
        Locale locale = LocaleContextHolder.getLocale();
        Matcher run = RUN.matcher(name);
        if (run.matches()) {
            return messages.getMessage("test.run", new Object[] {Integer.parseInt(run.group(1)) + 1}, locale) + ": "
                    + label(run.group(2));
        }
        String last = name.substring(name.lastIndexOf('.') + 1);
        String own = messages.getMessage("guided." + last + ".label", null, "", locale);
        return own == null || own.isEmpty() ? messages.getMessage("test." + last + ".label", null, name, locale) : own;
    }
}
