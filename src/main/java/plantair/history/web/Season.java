package plantair.history.web;

import java.time.LocalDate;
import java.time.Month;
import java.time.ZoneId;
import java.time.ZoneOffset;

/**
 * A season of a year, as far as the time zone tells on which half of the earth a plant stands: by when its clocks are put
 * forward. Where they never are, the name of the month stands instead.
 *
 * @param name of a season, or of a month
 * @param years the year, or both of a winter that runs into the next
 */
record Season(String name, String years) {

    private static final String[] NAMES = {"WINTER", "SPRING", "SUMMER", "AUTUMN"};

    static Season of(LocalDate day, ZoneId zone) {
        String year = String.valueOf(day.getYear());
        boolean north = isForward(zone, day.getYear(), Month.JULY);
        if (!north && !isForward(zone, day.getYear(), Month.JANUARY)) {
            return new Season(day.getMonth().name(), year);
        }
        int quarter = day.getMonthValue() % 12 / 3;
        int fromWinter = north ? quarter : (quarter + 2) % 4;
        return new Season(NAMES[fromWinter], quarter == 0 ? acrossNewYear(day) : year);
    }

    private static String acrossNewYear(LocalDate day) {
        int first = day.getMonth() == Month.DECEMBER ? day.getYear() : day.getYear() - 1;
        return first + "/" + (first + 1);
    }

    private static boolean isForward(ZoneId zone, int year, Month month) {
        var noon = LocalDate.of(year, month, 15).atTime(12, 0).toInstant(ZoneOffset.UTC);
        return zone.getRules().isDaylightSavings(noon);
    }
}
