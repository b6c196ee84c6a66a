/* A struct of include/tablerig.h as JNA lays it out; it belongs to Java, and the library keeps no pointer to it. */
package tablerig;

import com.sun.jna.Pointer;
import com.sun.jna.Structure;

public abstract class Struct extends Structure {
    /** Its place in memory with what is in it now, for a field of another struct that points to it. */
    public Pointer pointer() {
        write();
        return getPointer();
    }

    /** Where a field begins, in bytes. */
    public int offset(String field) {
        return fieldOffset(field);
    }
}
