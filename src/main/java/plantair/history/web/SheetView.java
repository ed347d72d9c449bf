package plantair.history.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.history.web.CardView.Face;
import plantair.paper.QrCode;

/**
 * The run sheet of a machine; what is not known is empty and left as a blank.
 *
 * @param compressorId the machine
 * @param tag how the plant calls it
 * @param site its site
 * @param plate maker and model
 * @param kind code of how it compresses
 * @param ratings its rating points
 * @param numbers of the volume that is filled; null when no test tells
 * @param face its pass-by card; null without one
 * @param gauges instruments of the baseline test and until when they are calibrated
 * @param readings keys of what is read each quarter
 * @param address of its guided test
 * @param isLocal whether only this computer can reach that
 * @param printedOn today at the site
 */
public record SheetView(
        long compressorId,
        String tag,
        String site,
        String plate,
        String kind,
        List<String> ratings,
        @Nullable Numbers numbers,
        @Nullable Face face,
        List<Gauge> gauges,
        List<String> readings,
        QrCode address,
        boolean isLocal,
        String printedOn) {

    /**
     * The volume that is filled.
     *
     * @param volumes its parts
     * @param net all of it, less the water of the baseline test
     * @param mawp the lowest; empty when not known
     * @param relief set pressures of relief valves as typed; empty when not known
     */
    public record Numbers(String volumes, String net, String mawp, String relief) {}

    /**
     * An instrument.
     *
     * @param code key of what is said of it
     * @param tag how the plant calls it
     * @param until last day of its calibration; empty without one
     */
    public record Gauge(String code, String tag, String until) {}
}
