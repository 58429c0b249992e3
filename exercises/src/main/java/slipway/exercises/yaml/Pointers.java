package slipway.exercises.yaml;

import com.networknt.schema.path.NodePath;

/** JSON pointers, and the way they are shown to people. */
public final class Pointers {
    private Pointers() {}

    /** The pointer of a key of an object. */
    public static String child(String pointer, String key) {
        return pointer + "/" + key.replace("~", "~0").replace("/", "~1");
    }

    /** The pointer of an entry of a list, from 0. */
    public static String child(String pointer, int index) {
        return pointer + "/" + index;
    }

    static String parent(String pointer) {
        return pointer.substring(0, Math.max(0, pointer.lastIndexOf('/')));
    }

    static String of(NodePath path) {
        String pointer = "";
        for (int i = 0; i < path.getNameCount(); i++) {
            pointer = child(pointer, String.valueOf(path.getElement(i)));
        }
        return pointer;
    }

    /** {@code /poses/1/angles} in the way people write it: {@code poses[1].angles}. */
    public static String shown(String pointer) {
        return pointer.replaceAll("/(\\d+)(?=/|$)", "[$1]")
                .replace("/", ".")
                .replaceFirst("^\\.", "")
                .replace("~1", "/")
                .replace("~0", "~");
    }

    /** {@code poses[1].angles} as {@code /poses/1/angles}. */
    public static String fromShown(String shown) {
        return shown.isBlank()
                ? ""
                : "/" + shown.strip().replaceAll("\\[(\\d+)]", ".$1").replace('.', '/');
    }
}
