package plantair.export;

import static plantair.export.TestColumn.number;

import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plantair.pumpup.Uncertainty.Component;
import plantair.pumpup.Uncertainty.Source;

/** The uncertainty of the delivered flow, a column for each thing that it comes from. */
final class BudgetColumns {

    private BudgetColumns() {}

    static Stream<TestColumn> all() {
        return Stream.of(Source.values())
                .map(source -> number(
                        "u_" + source.name().toLowerCase(Locale.ROOT), description(source), run -> part(run, source)));
    }

    private static @Nullable Double part(TestRun run, Source source) {
        for (Component component : run.result().uncertainty().components()) {
            if (component.source() == source) {
                return component.relative();
            }
        }
        return null;
    }

    private static String description(Source source) {
        return "part of `relative_u_combined` from "
                + source.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
