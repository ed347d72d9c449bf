package plantair.register;

import java.util.Optional;
import org.springframework.data.repository.NoRepositoryBean;
import org.springframework.data.repository.Repository;

/** What a register needs of its table. */
@NoRepositoryBean
public interface Records<E> extends Repository<E, Long> {

    E saveAndFlush(E record);

    Optional<E> findById(long id);

    long count();
}
