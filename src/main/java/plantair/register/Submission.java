package plantair.register;

import java.util.Optional;
import java.util.function.Function;
import org.hibernate.exception.ConstraintViolationException;
import org.hibernate.exception.ConstraintViolationException.ConstraintKind;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.http.HttpStatus;
import org.springframework.validation.Errors;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import plantair.web.FieldChecks;
import plantair.web.Flash;
import plantair.web.Person;
import plantair.web.Warnings;

/** A register's form as it was sent in: what is wrong or odd with it, who signs it, and the answer to it. */
public final class Submission {

    private static final int LONGEST_REASON = 1000;
    private static final String NEW = "registered";

    private final EditForm edit;
    private final String confirmed;
    private final Errors errors;
    private final Person person;
    private final FieldChecks checks;
    private final Warnings warnings = new Warnings();
    private boolean change;
    private @Nullable Clash clash;

    /**
     * A form to be checked.
     *
     * @param edit its part for the register
     * @param confirmed what the tick under its warnings sent
     * @param errors its errors
     * @param person who sent it
     */
    public Submission(EditForm edit, String confirmed, Errors errors, Person person) {
        this.edit = edit;
        this.confirmed = confirmed;
        this.errors = errors;
        this.person = person;
        this.checks = new FieldChecks(errors);
    }

    public FieldChecks checks() {
        return checks;
    }

    /** What is wrong so far. */
    public Errors errors() {
        return errors;
    }

    public Warnings warnings() {
        return warnings;
    }

    /** Refuses what stands in a field. */
    public void reject(String path, String code, Object... args) {
        errors.rejectValue(path, code, args, code);
    }

    /**
     * Makes this the change of a thing. Refused when somebody else changed the thing since the form was opened; the form
     * is then shown with both versions side by side, and may be sent again. Refused too when nothing would change.
     */
    public <F extends Facts, E extends Registered<F>> void change(Register<F, E> register, E thing, Optional<F> facts) {
        change = true;
        String version = String.valueOf(thing.version());
        int seen = edit.seenVersion();
        if (!edit.getVersion().equals(version)) {
            edit.setVersion(version);
            clash = Clash.of(register.since(thing, seen), thing.facts(), facts);
            errors.reject("register.stale");
        } else if (facts.isPresent() && facts.get().lines().equals(thing.facts().lines())) {
            errors.reject("register.unchanged");
        }
    }

    /**
     * Saves when nothing is wrong and every warning was confirmed.
     *
     * @param namePath field of the name that no other thing may have; told when the database knows better
     * @param saving saves the thing
     * @return what was saved; empty when nothing was
     */
    public <E> Optional<E> save(String namePath, Function<Signature, E> saving) {
        var reason = checks.text("edit.reason", edit.getReason(), LONGEST_REASON, change);
        if (errors.hasErrors() || !warnings.confirmedBy(confirmed)) {
            return Optional.empty();
        }
        try {
            return Optional.of(saving.apply(new Signature(person.name(), reason.orElse(NEW))));
        } catch (DataIntegrityViolationException failure) {
            if (!isTaken(failure)) {
                throw failure;
            }
            reject(namePath, "register.taken");
            return Optional.empty();
        }
    }

    private static boolean isTaken(DataIntegrityViolationException failure) {
        return failure.getCause() instanceof ConstraintViolationException violation
                && violation.getKind() == ConstraintKind.UNIQUE;
    }

    /** The form once more, with all that was typed. */
    public ModelAndView refused(String view) {
        var page = new ModelAndView(view, clash == null ? HttpStatus.UNPROCESSABLE_CONTENT : HttpStatus.CONFLICT);
        page.addObject("warnings", warnings);
        page.addObject("clash", clash);
        return page;
    }

    /** Off to the page of what was saved. */
    public ModelAndView accepted(String address, RedirectAttributes redirect) {
        Flash.say(redirect, "register.saved");
        return new ModelAndView("redirect:" + address);
    }
}
