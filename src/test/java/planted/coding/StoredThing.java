package planted.coding;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;

/** An entity for {@link EntityFormController}. */
@Entity
public class StoredThing {

    @Id
    long id;
}
