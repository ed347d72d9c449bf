package plantair.site.web;

import java.util.Currency;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import plantair.quantity.Entered;
import plantair.quantity.FixedUnit;
import plantair.register.Submission;
import plantair.web.EnteredField;

/**
 * What a person types about the price of electricity.
 *
 * @param currency code of the money, any case
 * @param tariff money for a kilowatt hour
 */
record Money(String currency, EnteredField tariff) {

    /** ISO 4217; codes that begin with X belong to metals, funds and tests, but for those that several countries share. */
    private static final Set<String> CODES = Currency.getAvailableCurrencies().stream()
            .map(Currency::getCurrencyCode)
            .filter(code ->
                    !code.startsWith("X") || Set.of("XAF", "XOF", "XCD", "XPF").contains(code))
            .collect(Collectors.toUnmodifiableSet());

    Optional<String> readCurrency(Submission sent) {
        String code = currency.strip().toUpperCase(Locale.ROOT);
        if (CODES.contains(code)) {
            return Optional.of(code);
        }
        if (!code.isEmpty()) {
            sent.reject("currency", "site.currency.unknown");
        } else if (!tariff.isBlank()) {
            sent.reject("currency", "site.currency.missing");
        }
        return Optional.empty();
    }

    Optional<Entered> readTariff(Submission sent) {
        var checks = sent.checks();
        return checks.positive("tariff", checks.optional("tariff", tariff, FixedUnit.PER_KILOWATT_HOUR));
    }
}
