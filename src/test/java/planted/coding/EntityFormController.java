package planted.coding;

import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PostMapping;

/** A controller that binds a request to an entity inside a list. */
@Controller
public class EntityFormController {

    @PostMapping
    String save(List<StoredThing> things) {
        return things.toString();
    }
}
