package slipway.store.tables;

import java.time.LocalDateTime;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/** Table {@code user_credentials}. */
public final class UserCredentialsTable {
    public static final Table<Record> USER_CREDENTIALS = Columns.table("user_credentials");
    public static final Field<String> CREDENTIAL_ID = Columns.text("user_credentials", "credential_id");
    public static final Field<String> USER_ENTITY_USER_ID = Columns.text("user_credentials", "user_entity_user_id");
    public static final Field<byte[]> PUBLIC_KEY = Columns.bytes("user_credentials", "public_key");
    public static final Field<Long> SIGNATURE_COUNT = Columns.wholeLong("user_credentials", "signature_count");
    public static final Field<Boolean> UV_INITIALIZED = Columns.yesNo("user_credentials", "uv_initialized");
    public static final Field<Boolean> BACKUP_ELIGIBLE = Columns.yesNo("user_credentials", "backup_eligible");
    public static final Field<String> AUTHENTICATOR_TRANSPORTS =
            Columns.text("user_credentials", "authenticator_transports");
    public static final Field<String> PUBLIC_KEY_CREDENTIAL_TYPE =
            Columns.text("user_credentials", "public_key_credential_type");
    public static final Field<Boolean> BACKUP_STATE = Columns.yesNo("user_credentials", "backup_state");
    public static final Field<byte[]> ATTESTATION_OBJECT = Columns.bytes("user_credentials", "attestation_object");
    public static final Field<byte[]> ATTESTATION_CLIENT_DATA_JSON =
            Columns.bytes("user_credentials", "attestation_client_data_json");
    public static final Field<LocalDateTime> CREATED = Columns.timestamp("user_credentials", "created");
    public static final Field<LocalDateTime> LAST_USED = Columns.timestamp("user_credentials", "last_used");
    public static final Field<String> LABEL = Columns.text("user_credentials", "label");

    private UserCredentialsTable() {}
}
