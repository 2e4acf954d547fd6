package stenotherm.parcel;

import stenotherm.grid.Box;

/** Something that lies in the fill and takes up room. */
record Item(String name, Box box) {}
