package plantair.attachment;

import java.util.List;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import plantair.register.ChangeKind;

/** Photos and papers keep their files among the pieces. */
@Component
@Order(1)
final class AttachmentHolder implements FileHolder {

    private final Attachments attachments;

    AttachmentHolder(Attachments attachments) {
        this.attachments = attachments;
    }

    @Override
    public List<String> recordsWith(String sha256) {
        return attachments.findBySha256OrderById(sha256).stream()
                .map(attachment -> ChangeKind.ATTACHMENT + " " + attachment.id())
                .toList();
    }

    @Override
    public String ending(String sha256) {
        return attachments.findBySha256OrderById(sha256).get(0).format().ending();
    }
}
