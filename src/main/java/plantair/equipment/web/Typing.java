package plantair.equipment.web;

import java.util.Optional;
import plantair.quantity.Entered;
import plantair.quantity.FixedUnit;
import plantair.quantity.Unit;
import plantair.register.Submission;
import plantair.web.EnteredField;

/**
 * Reads typed readings that must be more than zero and asks about unusual ones.
 *
 * @param sent the form
 */
record Typing(Submission sent) {

    Optional<Entered> required(String path, EnteredField field, Class<? extends Unit> kind, Usual usual) {
        return usual(path, sent.checks().required(path, field, kind), usual);
    }

    Optional<Entered> optional(String path, EnteredField field, Class<? extends Unit> kind, Usual usual) {
        return usual(path, sent.checks().optional(path, field, kind), usual);
    }

    Optional<Entered> optional(String path, EnteredField field, FixedUnit only, Usual usual) {
        return usual(path, sent.checks().optional(path, field, only), usual);
    }

    private Optional<Entered> usual(String path, Optional<Entered> typed, Usual usual) {
        Optional<Entered> positive = sent.checks().positive(path, typed);
        usual.ask(sent.warnings(), path, positive);
        return positive;
    }
}
