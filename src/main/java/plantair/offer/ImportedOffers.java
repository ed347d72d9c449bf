package plantair.offer;

import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Component;
import plantair.register.ImportedRecords;

/** Looks for an offer that cannot be put on any basis. */
@Component
final class ImportedOffers implements ImportedRecords {

    private static final int BATCH = 100;

    private final Offers offers;

    ImportedOffers(Offers offers) {
        this.offers = offers;
    }

    @Override
    public Optional<Impossible> impossible() {
        long last = 0;
        List<RegisteredOffer> batch = offers.findByIdGreaterThanOrderById(last, Limit.of(BATCH));
        while (!batch.isEmpty()) {
            for (RegisteredOffer offer : batch) {
                if (!isPossible(offer)) {
                    return Optional.of(new Impossible("offers.csv", offer.id()));
                }
                last = offer.id();
            }
            batch = offers.findByIdGreaterThanOrderById(last, Limit.of(BATCH));
        }
        return Optional.empty();
    }

    private static boolean isPossible(RegisteredOffer offer) {
        try {
            offer.facts().offer();
            return true;
        } catch (RuntimeException contradiction) {
            return false;
        }
    }
}
