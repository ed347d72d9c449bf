package plantair.testrecord.web;

import java.util.List;
import plantair.testrecord.LapPieces;
import plantair.testrecord.PumpUpTest;

/**
 * The pieces of a run between its marks, as ready text.
 *
 * @param run number of the run
 * @param pieces in their order
 */
record LapsView(int run, List<Piece> pieces) {

    /** One piece. */
    record Piece(String from, String to, String time, String flow) {}

    static List<LapsView> of(PumpUpTest test, ResultWords words) {
        return LapPieces.of(test).stream()
                .map(run -> new LapsView(
                        run.run(),
                        run.pieces().stream()
                                .map(piece -> new Piece(
                                        words.format().gauge(piece.from()),
                                        words.format().gauge(piece.to()),
                                        words.format().elapsed(piece.elapsed()),
                                        words.format().flow(piece.byHand())))
                                .toList()))
                .toList();
    }
}
