package plantair.register;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FactLinesTests {

    @Test
    void writesOneFactALineAndLeavesOutWhatIsNotKnown() {
        var lines = new FactLines()
                .add("tag", "C-1")
                .add("serial number", "")
                .add("volume", null)
                .add("kind", ChangeKind.COMPRESSOR)
                .add("in service", false);

        assertThat(lines).hasToString("tag: C-1\nkind: compressor\nin service: no");
    }

    @Test
    void letsNoNotePassForAFact() {
        var lines = new FactLines().add("note", "read again\nMAWP: 900 psi").add("tag", "R-1");

        assertThat(FactLines.split(lines.toString()))
                .containsExactly("note: read again\n    MAWP: 900 psi", "tag: R-1");
    }
}
