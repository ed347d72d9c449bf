package plantair.offer.web;

import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;
import plantair.cost.YearFields;
import plantair.offer.RegisteredOffer;
import plantair.offer.web.Comparison.Chosen;
import plantair.pumpup.Intake;
import plantair.pumpup.Station;
import plantair.quantity.Entered;
import plantair.quantity.FlowRate;
import plantair.quantity.FlowUnit;
import plantair.quantity.GaugePressure;
import plantair.quantity.RelativeHumidity;
import plantair.quantity.Temperature;
import plantair.site.SiteFacts;
import plantair.web.FieldChecks;

/** Reads the form of a comparison: all is understood, or each that is not has a message beside it. */
@Component
final class CompareReader {

    Optional<Comparison> read(CompareForm form, SiteFacts site, List<RegisteredOffer> open, Errors errors) {
        var checks = new FieldChecks(errors);
        var readings = new OfferReadings(checks);
        List<RegisteredOffer> chosen = open.stream()
                .filter(offer -> form.getOffers().contains(String.valueOf(offer.id())))
                .toList();
        if (chosen.size() < form.getOffers().stream().distinct().count()) {
            errors.rejectValue("offers", "offers.elsewhere");
        } else if (chosen.size() < 2) {
            errors.rejectValue("offers", "offers.two");
        }
        Optional<Entered> pressure = readings.pressure("pressure", form.getPressure());
        Optional<Entered> temperature = readings.temperature("temperature", form.getTemperature());
        Optional<Entered> humidity = readings.humidity("humidity", form.getHumidity());
        Optional<Entered> flow = checks.positive("flow", checks.optional("flow", form.getFlow(), FlowUnit.class));
        Optional<Entered> hours = YearFields.hours(checks, form.getHours());
        Optional<Entered> tariff = YearFields.tariff(checks, form.getTariff());
        if (errors.hasErrors()) {
            return Optional.empty();
        }
        var station = new Station(
                null, site.normalBarometer().orElse(null), site.height().orElse(null));
        return Optional.of(new Comparison(
                chosen.stream()
                        .map(offer -> new Chosen(
                                offer.id(),
                                offer.facts().flow() + ", " + offer.facts().power() + ", "
                                        + offer.facts().pressure(),
                                offer.facts().offer()))
                        .toList(),
                new Intake(
                        station.pressure(),
                        Temperature.of(temperature.orElseThrow()),
                        RelativeHumidity.of(humidity.orElseThrow())),
                GaugePressure.of(pressure.orElseThrow()),
                flow.map(FlowRate::of).orElse(null),
                hours.map(Entered::value).orElse(YearFields.ALL_YEAR),
                tariff.or(() -> Optional.ofNullable(site.tariff()))
                        .map(Entered::value)
                        .orElse(null),
                site.currency()));
    }
}
