package plantair.pumpup;

import java.util.List;

/**
 * What the method has to say about a test, without words; docs/findings.md has them.
 *
 * @param code which finding
 * @param figures the numbers in its sentence, in the order of the catalogue
 */
public record Finding(FindingCode code, List<Figure> figures) {

    static Finding of(FindingCode code, Figure... figures) {
        return new Finding(code, List.of(figures));
    }
}
