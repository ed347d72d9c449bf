package plantair.demo;

import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import plantair.demo.Weather.Climate;
import plantair.pumpup.AirTemperature;

/**
 * The truth about a compressor and the way it is tested.
 *
 * @param tag of the compressor
 * @param climate of its room
 * @param flow delivered when new, at the middle of the band, m³/s at the intake
 * @param droop part of the flow lost for each pascal above the middle
 * @param condition flow as a part of the flow when new, by day
 * @param inletExcess how much warmer than the room the air enters the tank, K
 * @param treatment how the receiver air is treated
 * @param gauge in use on a day
 * @param start mark at which the clock starts
 * @param stop mark at which it is stopped
 * @param tags of what is pumped up
 * @param trueVolume true volume over the volume of the plates
 * @param probeError of the thermometer in the receiver, K
 * @param habits how it is written down
 */
record Machine(
        String tag,
        Climate climate,
        double flow,
        double droop,
        ToDoubleFunction<LocalDate> condition,
        double inletExcess,
        AirTemperature treatment,
        Function<LocalDate, Gauge> gauge,
        double start,
        double stop,
        List<String> tags,
        double trueVolume,
        double probeError,
        Habits habits) {

    /**
     * How the people of this machine write.
     *
     * @param metric °C and hPa
     * @param colon minutes and seconds with a colon
     * @param readsWeather barometer and humidity are read
     * @param readsSpeed shaft speed is read
     * @param testers who does the test
     * @param notes what they write now and then
     */
    record Habits(
            boolean metric,
            boolean colon,
            boolean readsWeather,
            boolean readsSpeed,
            List<String> testers,
            List<String> notes) {

        String tester(Random random) {
            return testers.get(random.nextInt(testers.size()));
        }

        String note(Random random) {
            return random.nextInt(100) < 35 ? notes.get(random.nextInt(notes.size())) : "";
        }
    }
}
