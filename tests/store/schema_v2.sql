PRAGMA application_id = 1650551156;
PRAGMA user_version = 2;
CREATE TABLE ingredient (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL,
    folded TEXT NOT NULL UNIQUE,
    kind TEXT NOT NULL,
    colour TEXT NOT NULL,
    solute TEXT NOT NULL,
    dose_basis TEXT,
    dose_measure TEXT,
    dose_each REAL,
    keeps_dry REAL,
    keeps_cold REAL,
    keeps_frozen REAL,
    note TEXT NOT NULL,
    owner TEXT NOT NULL
) STRICT;
CREATE TABLE ingredient_property (
    ingredient_id INTEGER NOT NULL REFERENCES ingredient ON DELETE CASCADE,
    key TEXT NOT NULL,
    value REAL NOT NULL,
    spread REAL NOT NULL,
    source TEXT NOT NULL,
    PRIMARY KEY (ingredient_id, key)
) STRICT, WITHOUT ROWID;
CREATE TABLE pack (
    ingredient_id INTEGER NOT NULL REFERENCES ingredient ON DELETE CASCADE,
    position INTEGER NOT NULL,
    measure TEXT NOT NULL,
    size REAL NOT NULL,
    price_minor INTEGER,
    currency TEXT,
    priced_on TEXT NOT NULL,
    shop TEXT NOT NULL,
    PRIMARY KEY (ingredient_id, position),
    CHECK ((price_minor IS NULL) = (currency IS NULL))
) STRICT, WITHOUT ROWID;
CREATE TABLE caution (
    ingredient_id INTEGER NOT NULL REFERENCES ingredient ON DELETE CASCADE,
    position INTEGER NOT NULL,
    word TEXT NOT NULL,
    PRIMARY KEY (ingredient_id, position)
) STRICT, WITHOUT ROWID;
CREATE TABLE recipe (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL,
    folded TEXT NOT NULL UNIQUE,
    feel TEXT NOT NULL,
    purpose TEXT NOT NULL,
    avoid TEXT NOT NULL,
    why TEXT NOT NULL,
    note TEXT NOT NULL,
    owner TEXT NOT NULL
) STRICT;
CREATE TABLE recipe_part (
    recipe_id INTEGER NOT NULL REFERENCES recipe ON DELETE CASCADE,
    position INTEGER NOT NULL,
    part_of TEXT NOT NULL,
    measure TEXT NOT NULL,
    amount REAL NOT NULL,
    prepare TEXT NOT NULL,
    PRIMARY KEY (recipe_id, position)
) STRICT, WITHOUT ROWID;
CREATE TABLE recipe_dose (
    recipe_id INTEGER NOT NULL REFERENCES recipe ON DELETE CASCADE,
    position INTEGER NOT NULL,
    dose_of TEXT NOT NULL,
    basis TEXT NOT NULL,
    measure TEXT NOT NULL,
    each REAL NOT NULL,
    PRIMARY KEY (recipe_id, position)
) STRICT, WITHOUT ROWID;
CREATE TABLE feel (
    below REAL NOT NULL,
    folded TEXT NOT NULL UNIQUE,
    name TEXT NOT NULL,
    aim REAL NOT NULL,
    purpose TEXT NOT NULL,
    owner TEXT NOT NULL,
    PRIMARY KEY (below, folded)
) STRICT, WITHOUT ROWID;
CREATE TABLE retired (
    id INTEGER PRIMARY KEY,
    kind TEXT NOT NULL,
    folded TEXT NOT NULL,
    name TEXT NOT NULL,
    retired_on TEXT NOT NULL,
    text TEXT NOT NULL
) STRICT;
CREATE INDEX retired_by_name ON retired (kind, folded);
CREATE TABLE meta (
    key TEXT PRIMARY KEY,
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE TABLE strategy (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL,
    folded TEXT NOT NULL UNIQUE,
    purpose TEXT NOT NULL,
    avoid TEXT NOT NULL,
    why TEXT NOT NULL,
    note TEXT NOT NULL,
    length REAL NOT NULL,
    spare REAL NOT NULL,
    depth REAL,
    temperature REAL,
    clarity TEXT NOT NULL,
    tow REAL,
    tow_bottom REAL,
    put_ins_per_hour REAL,
    fish_per_hour REAL,
    owner TEXT NOT NULL
) STRICT;
CREATE TABLE strategy_feed (
    strategy_id INTEGER NOT NULL REFERENCES strategy ON DELETE CASCADE,
    position INTEGER NOT NULL,
    rhythm TEXT NOT NULL,
    every REAL,
    starts REAL NOT NULL,
    until REAL,
    form TEXT NOT NULL,
    measure TEXT NOT NULL,
    size REAL NOT NULL,
    count INTEGER NOT NULL,
    feel TEXT NOT NULL,
    PRIMARY KEY (strategy_id, position)
) STRICT, WITHOUT ROWID;
CREATE TABLE strategy_feed_part (
    strategy_id INTEGER NOT NULL,
    feed INTEGER NOT NULL,
    position INTEGER NOT NULL,
    part_of TEXT NOT NULL,
    share REAL NOT NULL,
    prepare TEXT NOT NULL,
    PRIMARY KEY (strategy_id, feed, position),
    FOREIGN KEY (strategy_id, feed) REFERENCES strategy_feed ON DELETE CASCADE
) STRICT, WITHOUT ROWID;
CREATE TABLE strategy_hookbait (
    strategy_id INTEGER NOT NULL REFERENCES strategy ON DELETE CASCADE,
    position INTEGER NOT NULL,
    bait TEXT NOT NULL,
    measure TEXT NOT NULL,
    amount REAL NOT NULL,
    PRIMARY KEY (strategy_id, position)
) STRICT, WITHOUT ROWID;
