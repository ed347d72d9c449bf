package plantair.register;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.validation.BeanPropertyBindingResult;
import plantair.quantity.Entered;
import plantair.quantity.LengthUnit;
import plantair.site.Site;
import plantair.site.SiteFacts;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.web.Person;

abstract class SubmissionTests {

    @Autowired
    private Register<SiteFacts, Site> sites;

    @Autowired
    private Changes changes;

    @Autowired
    private Database database;

    /** The form of a test. */
    public static final class NameForm {

        private final EditForm edit = new EditForm();

        public String getName() {
            return "North";
        }

        public EditForm getEdit() {
            return edit;
        }
    }

    private final NameForm form = new NameForm();
    private final BeanPropertyBindingResult errors = new BeanPropertyBindingResult(form, "form");
    private final Submission sent = new Submission(form.getEdit(), "", errors, new Person("Ann", "ann", false));

    @BeforeEach
    void startEmpty() {
        database.wipe();
    }

    @Test
    void tellsBesideTheNameThatItWasTakenMeanwhile() {
        sites.add(north("up"), "registered", "Bo");

        var saved = sent.save("name", by -> sites.add(north("down"), by.reason(), by.by()));

        assertThat(saved).isEmpty();
        assertThat(errors.getFieldError("name").getCode()).isEqualTo("register.taken");
        assertThat(changes.count()).isEqualTo(1);
    }

    @Test
    void hidesNoOtherFaultBehindATakenName() {
        assertThatThrownBy(() -> sent.save("name", by -> sites.add(north("n".repeat(5_000)), by.reason(), by.by())))
                .isInstanceOf(DataIntegrityViolationException.class);
        assertThat(changes.count()).isZero();
    }

    private static Site north(String note) {
        return new Site(new SiteFacts("North", "UTC", new Entered("3", LengthUnit.METRE), null, note));
    }
}

@OnH2
final class SubmissionOnH2Tests extends SubmissionTests {}

@OnPostgres
final class SubmissionOnPostgresTests extends SubmissionTests {}
