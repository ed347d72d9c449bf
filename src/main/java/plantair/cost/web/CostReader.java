package plantair.cost.web;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;
import plantair.cost.CostedMachine;
import plantair.cost.SiteMachines;
import plantair.cost.YearFields;
import plantair.leaktest.SiteLeak;
import plantair.pumpup.SpecificPower;
import plantair.quantity.Entered;
import plantair.quantity.FixedUnit;
import plantair.quantity.SpecificPowerUnit;
import plantair.site.SiteFacts;
import plantair.supply.SiteSpecificPower;
import plantair.web.FieldChecks;

/** Reads the form of the cost of air: all is understood, or each that is not has a message beside it. */
@Component
final class CostReader {

    private static final double WHOLE = 100;

    /** What is to be reckoned; what was left blank is what is known. */
    Optional<CostQuestion> read(
            CostForm form, SiteFacts site, List<CostedMachine> machines, List<SiteLeak> leaks, Errors errors) {
        var checks = new FieldChecks(errors);
        Optional<Entered> specific =
                checks.positive("specific", checks.optional("specific", form.getSpecific(), SpecificPowerUnit.class));
        Optional<Entered> hours = YearFields.hours(checks, form.getHours());
        Optional<Entered> tariff = YearFields.tariff(checks, form.getTariff());
        Optional<Entered> idle = checks.within(
                "idle",
                checks.optional("idle", form.getIdle(), FixedUnit.PERCENT),
                typed -> typed.value() >= 0 && typed.value() < WHOLE,
                "cost.idle.range");
        Optional<SiteLeak> chosen = leak("leak", form.getLeak(), leaks, checks, errors);
        Optional<SiteLeak> after = leak("after", form.getAfter(), leaks, checks, errors);
        if (errors.hasErrors()) {
            return Optional.empty();
        }
        return Optional.of(new CostQuestion(
                specific.map(typed -> new SiteSpecificPower(SpecificPower.of(typed), 0))
                        .or(() -> SiteMachines.together(machines))
                        .orElse(null),
                specific.isPresent(),
                hours.map(Entered::value).orElse(YearFields.ALL_YEAR),
                hours.isPresent(),
                tariff.map(Entered::value).orElse(value(site.tariff())),
                tariff.isPresent(),
                Objects.requireNonNullElse(site.currency(), ""),
                idle.map(Entered::part).orElse(null),
                chosen.or(() -> leaks.stream().findFirst()).orElse(null),
                after.orElse(null)));
    }

    private static @Nullable Double value(@Nullable Entered typed) {
        return typed == null ? null : typed.value();
    }

    private static Optional<SiteLeak> leak(
            String path, String typed, List<SiteLeak> leaks, FieldChecks checks, Errors errors) {
        Optional<Long> id = checks.id(path, typed, false);
        Optional<SiteLeak> found = id.flatMap(
                wanted -> leaks.stream().filter(leak -> leak.testId() == wanted).findFirst());
        if (id.isPresent() && found.isEmpty()) {
            errors.rejectValue(path, "cost.leak.elsewhere");
        }
        return found;
    }
}
