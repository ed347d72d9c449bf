package plantair.offer;

import java.util.Optional;
import org.springframework.stereotype.Component;
import plantair.register.ImportedRecords;

/** Looks for an offer that cannot be put on any basis. */
@Component
final class ImportedOffers implements ImportedRecords {

    private final Offers offers;

    ImportedOffers(Offers offers) {
        this.offers = offers;
    }

    @Override
    public Optional<Impossible> impossible() {
        return ImportedRecords.first(
                "offers.csv",
                offers::findByIdGreaterThanOrderById,
                RegisteredOffer::id,
                offer -> offer.facts().offer());
    }
}
