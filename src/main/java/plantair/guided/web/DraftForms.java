package plantair.guided.web;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.MutablePropertyValues;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;
import org.springframework.web.bind.WebDataBinder;
import plantair.guided.DraftContent;
import plantair.guided.DraftCopy;
import plantair.guided.Drafts;
import plantair.guided.StoredDraft;
import plantair.web.Person;

/** Between the form of a guided test and the copy of it that is kept. */
@Component
class DraftForms {

    private static final int LONGEST_DEVICE = 120;

    private final Drafts drafts;

    DraftForms(Drafts drafts) {
        this.drafts = drafts;
    }

    /** The form as it stands here, if it is this person's and no test yet. */
    Optional<StoredDraft> find(String key, Person person) {
        return parse(key)
                .flatMap(known -> drafts.findByDraftKeyAndPlace(known, 0))
                .filter(draft -> draft.username().equals(person.username()));
    }

    /** Puts kept fields into a form. */
    void fill(GuidedForm form, StoredDraft draft) {
        form.getPipes().clear();
        form.getReceivers().clear();
        var binder = new WebDataBinder(form);
        binder.setAutoGrowCollectionLimit(GuidedForm.RUNS);
        binder.setIgnoreInvalidFields(true);
        var values = new MutablePropertyValues();
        DraftContent.fields(draft.content()).forEach((name, typed) -> values.add(name, typed.toArray(String[]::new)));
        binder.bind(values);
    }

    /** The key of a form; empty, with an error, when it is none of ours. */
    Optional<UUID> key(GuidedForm form, Errors errors) {
        Optional<UUID> key = parse(form.getSubmission());
        if (key.isEmpty()) {
            errors.reject("test.submission");
        }
        return key;
    }

    DraftCopy copy(GuidedForm form, UUID key, long compressorId, Map<String, List<String>> sent, Person person) {
        String content = content(sent);
        int version = form.getDraftVersion().matches("\\d{1,9}") ? Integer.parseInt(form.getDraftVersion()) : 0;
        return new DraftCopy(
                key, compressorId, person.username(), version, content, cut(form.getDevice()), writer(form));
    }

    static String content(Map<String, List<String>> sent) {
        Map<String, String[]> fields = sent.entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey,
                        field -> field.getValue().toArray(String[]::new),
                        (one, other) -> one,
                        LinkedHashMap::new));
        return DraftContent.of(fields);
    }

    private static String writer(GuidedForm form) {
        return parse(form.getWriter()).map(UUID::toString).orElse("");
    }

    private static String cut(String text) {
        return text.length() <= LONGEST_DEVICE ? text : text.substring(0, LONGEST_DEVICE);
    }

    static Optional<UUID> parse(@Nullable String key) {
        try {
            return key == null ? Optional.empty() : Optional.of(UUID.fromString(key));
        } catch (IllegalArgumentException notOurs) {
            return Optional.empty();
        }
    }
}
