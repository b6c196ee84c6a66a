/* Prints size and offsets of every struct of the package, to be held against the header's by layout.py. */
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import tablerig.Optics;
import tablerig.Picture;
import tablerig.Planned;
import tablerig.Rig;
import tablerig.Room;
import tablerig.Standing;
import tablerig.Struct;

public final class Layout {
    private static final Class<?>[] FILES = {
        Optics.class, Room.class, Picture.class, Rig.class, Standing.class, Planned.class
    };

    public static void main(String[] arguments) throws ReflectiveOperationException {
        for (Class<?> file : FILES) {
            for (Class<?> type : file.getDeclaredClasses()) {
                Struct struct = (Struct) type.getDeclaredConstructor().newInstance();
                System.out.println(type.getSimpleName() + " size " + struct.size());
                for (Field field : type.getDeclaredFields()) {
                    if (Modifier.isPublic(field.getModifiers())) {
                        String name = field.getName();
                        System.out.println(type.getSimpleName() + "." + name + " " + struct.offset(name));
                    }
                }
            }
        }
    }
}
