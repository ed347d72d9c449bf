package plantair.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import org.springframework.boot.autoconfigure.EnableAutoConfiguration;
import org.springframework.boot.data.jpa.autoconfigure.DataJpaRepositoriesAutoConfiguration;
import org.springframework.boot.flyway.autoconfigure.FlywayAutoConfiguration;
import org.springframework.boot.health.autoconfigure.actuate.endpoint.HealthEndpointAutoConfiguration;
import org.springframework.boot.hibernate.autoconfigure.HibernateJpaAutoConfiguration;
import org.springframework.boot.jdbc.autoconfigure.DataSourceAutoConfiguration;
import org.springframework.boot.security.autoconfigure.SecurityAutoConfiguration;
import org.springframework.boot.security.autoconfigure.UserDetailsServiceAutoConfiguration;
import org.springframework.boot.security.autoconfigure.actuate.web.servlet.ManagementWebSecurityAutoConfiguration;
import org.springframework.boot.security.autoconfigure.web.servlet.SecurityFilterAutoConfiguration;
import org.springframework.boot.security.autoconfigure.web.servlet.ServletWebSecurityAutoConfiguration;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseBody;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import plantair.quantity.DurationUnit;
import plantair.quantity.FixedUnit;
import plantair.quantity.PressureUnit;

/** A site without database that has one page of every kind. */
@EnableAutoConfiguration(
        exclude = {
            DataSourceAutoConfiguration.class,
            HibernateJpaAutoConfiguration.class,
            DataJpaRepositoriesAutoConfiguration.class,
            FlywayAutoConfiguration.class,
            HealthEndpointAutoConfiguration.class, // it asks the database
            SecurityAutoConfiguration.class,
            UserDetailsServiceAutoConfiguration.class,
            ServletWebSecurityAutoConfiguration.class,
            SecurityFilterAutoConfiguration.class,
            ManagementWebSecurityAutoConfiguration.class
        })
@ComponentScan("plantair.web")
public class SampleSite {

    /** One point of the sample chart. */
    public record Row(String date, String flow, String line, String included) {}

    /** The pages. */
    @TestConfiguration
    @Controller
    public static class Pages {

        @GetMapping("/sample")
        String form(@ModelAttribute("form") SampleForm form, Model model) {
            return show(model);
        }

        @PostMapping("/sample")
        String save(
                @ModelAttribute("form") SampleForm form,
                BindingResult errors,
                Model model,
                RedirectAttributes redirect,
                HttpServletResponse response) {
            var checks = new FieldChecks(errors);
            var warnings = new Warnings();
            checks.text("name", form.getName(), 20, true);
            checks.text("notes", form.getNotes(), 5000, false);
            checks.choice("kind", form.getKind(), Status.Kind.class);
            checks.date("day", form.getDay(), false);
            checks.time("hour", form.getHour(), false);
            checks.whole("stages", form.getStages(), 1, 4, false);
            checks.optional("humidity", form.getHumidity(), FixedUnit.PERCENT);
            for (int i = 0; i < form.getRuns().size(); i++) {
                var run = form.getRuns().get(i);
                var start = checks.optional("runs[" + i + "].start", run.getStart(), PressureUnit.class);
                if (start.isPresent() && start.get().value() > 500) {
                    warnings.add(
                            "runs[" + i + "].start",
                            "number.NOT_A_NUMBER",
                            start.get().number());
                }
                checks.positive(
                        "runs[" + i + "].time",
                        checks.optional("runs[" + i + "].time", run.getTime(), DurationUnit.class));
            }
            if (errors.hasErrors() || !warnings.confirmedBy(form.getConfirmed())) {
                model.addAttribute("warnings", warnings);
                response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
                return show(model);
            }
            Flash.say(redirect, "whole.range", "1", "2", "3");
            return "redirect:/sample/list";
        }

        private static String show(Model model) {
            model.addAttribute("kinds", List.of(new Choice("GOOD", "good one"), new Choice("WATCH", "odd one")));
            model.addAttribute("pressures", UnitChoices.pressure());
            model.addAttribute("durations", UnitChoices.duration());
            model.addAttribute("percent", UnitChoices.only(FixedUnit.PERCENT));
            return "sample/form";
        }

        @GetMapping("/sample/list")
        String list(@RequestParam(defaultValue = "1") int page, UnitSet units, Model model) {
            model.addAttribute("status", new Status(Status.Kind.GOOD, "steady in " + units));
            model.addAttribute("watch", new Status(Status.Kind.WATCH, "look"));
            model.addAttribute("alarm", new Status(Status.Kind.ALARM, "below rating"));
            model.addAttribute("paging", new Paging("/sample/list", page, 50, 120));
            model.addAttribute(
                    "rows",
                    List.of(
                            new Row("2024-11-04", "33.1", "33.2", "true"),
                            new Row("2024-03-01", "31.0", "", "false"),
                            new Row("2023-06-12", "34.9", "34.4", "true"),
                            new Row("2022-02-20", "35.0", "35.4", "true")));
            return "sample/list";
        }

        @GetMapping("/sample/{id}/{what}")
        String fail(@PathVariable long id, @PathVariable String what) {
            if (what.equals("missing")) {
                throw new NoSuchRecord("no test " + id);
            }
            if (what.equals("stale")) {
                throw new StaleRecord("test " + id);
            }
            throw new IllegalStateException("secret " + what);
        }

        @PostMapping("/sample/upload")
        @ResponseBody
        String upload(@RequestParam MultipartFile file) {
            return file.getName();
        }
    }
}
