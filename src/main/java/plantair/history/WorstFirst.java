package plantair.history;

import java.time.Clock;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.PageImpl;
import org.springframework.data.domain.PageRequest;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.register.Changes;
import plantair.register.KeptUntilChange;
import plantair.trend.Standing;
import plantair.web.Paging;

/**
 * The machines of the overview: their order is kept until somebody changes something, what is told of them is read. States that
 * another instance makes anew at its start move a machine here after the next change, or after a quarter of an hour.
 */
@Service
public class WorstFirst {

    private final StoredStates states;
    private final KeptUntilChange<List<MachineRank>> ranks;

    WorstFirst(StoredStates states, Changes changes, Clock clock) {
        this.states = states;
        ranks = new KeptUntilChange<>(changes, clock, states::ranks);
    }

    /**
     * One page of the machines, worst first, those that were never tested after those; retired ones after those in service.
     *
     * @param siteId machines of this site only; 0 for all
     * @param tag part of their tag, in any letters; nothing is in every tag
     * @param retired whether retired machines are shown
     * @param standings those that are shown; a machine that was never tested stands as not known
     * @param page from 1; any other than those that exist is empty or the first
     */
    @Transactional(readOnly = true)
    public Page<MachineLine> page(
            long siteId, String tag, boolean retired, Collection<Standing> standings, int page, int size) {
        String part = tag.toLowerCase(Locale.ROOT);
        List<Long> found = ranks.get().stream()
                .filter(rank -> siteId == 0 || rank.siteId() == siteId)
                .filter(rank -> retired || rank.inService())
                .filter(rank -> rank.tag().toLowerCase(Locale.ROOT).contains(part))
                .filter(rank -> standings.contains(rank.standing()))
                .map(MachineRank::compressorId)
                .toList();
        PageRequest wanted = PageRequest.of(Paging.index(page), size);
        List<Long> shown = found.stream().skip(wanted.getOffset()).limit(size).toList();
        return new PageImpl<>(lines(shown), wanted, found.size());
    }

    /** For whoever makes states and writes no line of it in the chain. */
    public void forget() {
        ranks.forget();
    }

    private List<MachineLine> lines(List<Long> compressorIds) {
        Map<Long, MachineLine> read = states.linesOf(compressorIds).stream()
                .collect(Collectors.toMap(MachineLine::compressorId, Function.identity()));
        return compressorIds.stream().map(read::get).filter(Objects::nonNull).toList();
    }
}
