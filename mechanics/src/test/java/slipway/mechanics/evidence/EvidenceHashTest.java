package slipway.mechanics.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;

class EvidenceHashTest {
    @Test
    void isTheDigestOfNamesAndContentsInOrder() throws Exception {
        var bytes = new ByteArrayOutputStream();
        for (String table : EvidenceHash.tables()) {
            try (var stream = EvidenceHash.class.getResourceAsStream("/slipway/evidence/" + table)) {
                String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
                bytes.writeBytes((table + "\0" + text.replace("\r", "") + "\0").getBytes(StandardCharsets.UTF_8));
            }
        }
        assertThat(EvidenceHash.sha256())
                .isEqualTo(HexFormat.of()
                        .formatHex(MessageDigest.getInstance("SHA-256").digest(bytes.toByteArray())));
    }

    @Test
    void staysTheSameWithinOneProgram() {
        assertThat(EvidenceHash.sha256()).hasSize(64).isEqualTo(EvidenceHash.sha256());
    }
}
