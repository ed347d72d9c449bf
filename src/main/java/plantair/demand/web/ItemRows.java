package plantair.demand.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import plantair.demand.DemandKind;
import plantair.demand.ItemUse;
import plantair.demand.SiteBalance;
import plantair.quantity.Entered;
import plantair.quantity.GaugePressure;
import plantair.quantity.Rounded;
import plantair.supply.DemandItem;

/** What the items of a site take, in words and units. */
@Component
final class ItemRows {

    private static final String NONE = "–";

    private final Words words;
    private final ItemWords itemWords;

    ItemRows(Words words, ItemWords itemWords) {
        this.words = words;
        this.itemWords = itemWords;
    }

    List<ItemRow> of(SiteBalance balance, Flows flows) {
        return balance.items().stream().map(use -> row(use, balance, flows)).toList();
    }

    private ItemRow row(ItemUse use, SiteBalance balance, Flows flows) {
        DemandItem item = use.item();
        String label = use.facts().label();
        String source = itemWords.typed(use.facts());
        if (item == null) {
            String why = words.say("supply.item.cannot");
            return new ItemRow(use.id(), label, source, why, null, NONE, NONE, NONE, NONE, NONE, "0", "0");
        }
        return new ItemRow(
                use.id(),
                label,
                source,
                note(use, balance.at(), flows),
                item.count() == 1 ? flows.both(item.each()) : item.count() + " × (" + flows.both(item.each()) + ")",
                percent(item.useFactor()),
                flows.about(item.use()),
                percent(item.reserve()) + (isUsual(use) ? " " + words.say("supply.reserve.trade") : ""),
                flows.about(item.need()),
                flows.about(item.peak()),
                flows.drawn(item.use()),
                flows.drawn(item.need()));
    }

    private static boolean isUsual(ItemUse use) {
        return use.facts().kind() == DemandKind.BLAST_NOZZLE && use.facts().reserve() == null;
    }

    private @Nullable String note(ItemUse use, @Nullable GaugePressure at, Flows flows) {
        Entered least = use.facts().leastPressure();
        if (least != null && at != null && GaugePressure.of(least).pascals() > at.pascals()) {
            return words.say("supply.item.pressure", least);
        }
        if (use.worn() == null || use.item() == null) {
            return null;
        }
        return words.say(
                "supply.item.wear",
                flows.about(use.item().each().flow()),
                flows.about(use.worn().each().flow()),
                flows.unit());
    }

    private static String percent(double part) {
        double percent = 100 * part;
        return Rounded.places(percent, percent > 0 && percent < 10 ? 1 : 0) + " %";
    }
}
