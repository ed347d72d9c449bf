package plantair.export.web;

import java.util.List;
import java.util.stream.Stream;
import org.springframework.data.domain.Limit;
import plantair.equipment.CompressorName;
import plantair.equipment.Compressors;
import plantair.web.Choice;

/**
 * The machines that the form offers: of the chosen site, or of all.
 *
 * @param choices no more than {@value #MOST}; the chosen one is among them
 * @param cut whether there are more than these
 */
record MachineChoices(List<Choice> choices, boolean cut) {

    static final int MOST = 50;

    /** 0 where none is chosen. */
    static MachineChoices of(Compressors compressors, long site, long chosen) {
        List<CompressorName> some = compressors.findNames(site, Limit.of(MOST + 1));
        boolean listed = chosen == 0 || some.stream().limit(MOST).anyMatch(machine -> machine.id() == chosen);
        Stream<CompressorName> first = listed ? Stream.empty() : compressors.findName(chosen).stream();
        List<Choice> choices = Stream.concat(first, some.stream())
                .limit(MOST)
                .map(machine -> new Choice(String.valueOf(machine.id()), machine.site() + " – " + machine.tag()))
                .toList();
        return new MachineChoices(choices, some.size() > MOST);
    }
}
