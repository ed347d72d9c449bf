package plantair.history.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneId;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SeasonTests {

    @ParameterizedTest
    @CsvSource({
        "2028-03-01, America/Chicago,   SPRING, 2028",
        "2028-05-31, Europe/Oslo,       SPRING, 2028",
        "2028-06-01, Europe/Oslo,       SUMMER, 2028",
        "2028-11-30, Europe/Dublin,     AUTUMN, 2028",
        "2028-12-01, America/Chicago,   WINTER, 2028/2029",
        "2028-02-29, America/Chicago,   WINTER, 2027/2028",
        "2028-03-01, Pacific/Auckland,  AUTUMN, 2028",
        "2028-10-01, Australia/Sydney,  SPRING, 2028",
        "2028-01-15, Pacific/Auckland,  SUMMER, 2027/2028",
        "2028-07-01, Australia/Sydney,  WINTER, 2028",
        "2028-03-01, Asia/Kolkata,      MARCH,  2028",
        "2028-03-01, UTC,               MARCH,  2028",
    })
    void tellsTheSeasonWhereThePlantStands(LocalDate day, String zone, String name, String years) {
        assertThat(Season.of(day, ZoneId.of(zone))).isEqualTo(new Season(name, years));
    }
}
