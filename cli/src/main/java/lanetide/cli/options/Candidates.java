package lanetide.cli.options;

import java.util.Collection;
import java.util.Iterator;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import lanetide.cli.scenario.key.Names;
import lanetide.cli.scenario.key.RotationDesigns;
import lanetide.cli.schema.Schemas;
import lanetide.oilflow.catalogue.Catalogue;
import lanetide.squads.model.Counting;
import lanetide.squads.model.Levels;

/**
 * Names that ship with the program, for its help and for a shell that completes them. They are looked up only when
 * asked for.
 */
public abstract class Candidates implements Iterable<String> {
    private final Supplier<Collection<String>> names;

    private Candidates(Supplier<Collection<String>> names) {
        this.names = names;
    }

    @Override
    public Iterator<String> iterator() {
        return names.get().iterator();
    }

    /** Playing styles. */
    public static final class Styles extends Candidates {
        Styles() {
            super(() -> Catalogue.shipped().styles().keySet());
        }
    }

    /** Covers of balls. */
    public static final class Covers extends Candidates {
        Covers() {
            super(() -> Catalogue.shipped().covers().keySet());
        }
    }

    /** Surfaces of lanes. */
    public static final class Surfaces extends Candidates {
        Surfaces() {
            super(() -> Catalogue.shipped().surfaces().keySet());
        }
    }

    /** Levels of skill. */
    public static final class Skills extends Candidates {
        Skills() {
            super(() -> Levels.shipped().keySet());
        }
    }

    /** The hands. */
    public static final class Hands extends Candidates {
        Hands() {
            super(Names.HANDS::keySet);
        }
    }

    /** Designs of a rotation. */
    public static final class Designs extends Candidates {
        Designs() {
            super(() -> RotationDesigns.byRule().keySet());
        }
    }

    /** What there is a schema of. */
    public static final class Documents extends Candidates {
        Documents() {
            super(Schemas::names);
        }
    }

    /** What a lot decides. */
    static final class Draws extends Candidates {
        Draws() {
            super(() -> List.of("none", "groups", "squads"));
        }
    }

    /** What counts of who is entered again. */
    static final class Counts extends Candidates {
        Counts() {
            super(() -> Stream.of(Counting.values()).map(Counting::id).toList());
        }
    }

    /** Forms of finals. */
    static final class FinalsForms extends Candidates {
        FinalsForms() {
            super(() -> List.of("none", "round-robin", "head-to-head"));
        }
    }

    /** What is done with the lanes before a later squad. */
    static final class Oilings extends Candidates {
        Oilings() {
            super(Names.OILINGS::keySet);
        }
    }
}
