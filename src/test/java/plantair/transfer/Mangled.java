package plantair.transfer;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Files as nobody should send them. */
final class Mangled {

    private static final List<String> BAD = List.of(
            "\"",
            "\"\"\"",
            ",",
            ";;;",
            "\n",
            "\r",
            "\0",
            "\uFEFF",
            "=1+1",
            "@SUM(A1)",
            "-1e999",
            "NaN",
            "Infinity",
            "99999999999999999999",
            "0x10",
            "9999-99-99",
            "+999999999-12-31T00:00:00Z",
            "2020-02-30T25:61",
            "-",
            "'",
            "é",
            "\uD83D\uDE00",
            "${7*7}",
            "../../etc/passwd",
            "null",
            " ",
            "1:99",
            "99:59.999",
            "1;2;3",
            "RECEIVER x: 1 [gal_us]",
            "00000000-0000-0000-0000-000000000000");

    private Mangled() {}

    /** A CSV file with up to four things wrong with it. */
    static byte[] csv(byte[] good, Random random) {
        byte[] text = good;
        for (int i = random.nextInt(4); i >= 0; i--) {
            text = once(text, random);
        }
        return text;
    }

    private static byte[] once(byte[] text, Random random) {
        return switch (random.nextInt(7)) {
            case 0 -> bytes(text, random);
            case 1 -> Arrays.copyOf(text, random.nextInt(text.length + 1));
            case 2 -> cell(text, random, "x".repeat(random.nextInt(60_000)));
            case 3 -> line(text, random);
            default -> cell(text, random, BAD.get(random.nextInt(BAD.size())));
        };
    }

    /** Some bytes are others. */
    static byte[] bytes(byte[] good, Random random) {
        byte[] bytes = good.clone();
        for (int i = random.nextInt(5); i >= 0 && bytes.length > 0; i--) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        return bytes;
    }

    /** One cell holds something else. */
    private static byte[] cell(byte[] good, Random random, String other) {
        String text = new String(good, StandardCharsets.UTF_8);
        int from = text.indexOf(',', random.nextInt(text.length() + 1));
        if (from < 0) {
            return (text + other).getBytes(StandardCharsets.UTF_8);
        }
        int to = text.indexOf(',', from + 1);
        return (text.substring(0, from + 1) + other + (to < 0 ? "" : text.substring(to)))
                .getBytes(StandardCharsets.UTF_8);
    }

    /** One line is twice, or not at all. */
    private static byte[] line(byte[] good, Random random) {
        List<String> lines = new ArrayList<>(List.of(new String(good, StandardCharsets.UTF_8).split("\r\n")));
        int index = random.nextInt(lines.size());
        if (random.nextBoolean()) {
            lines.add(lines.get(index));
        } else {
            lines.remove(index);
        }
        return String.join("\r\n", lines).getBytes(StandardCharsets.UTF_8);
    }
}
