PRAGMA application_id = 1650551156;
PRAGMA user_version = 8;
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
, air_temperature REAL, air_humidity REAL, air_wind REAL, air_sun INTEGER NOT NULL DEFAULT 0) STRICT;
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
    feel TEXT NOT NULL, begins_after TEXT NOT NULL DEFAULT '',
    PRIMARY KEY (strategy_id, position)
) STRICT, WITHOUT ROWID;
CREATE TABLE strategy_feed_part (
    strategy_id INTEGER NOT NULL,
    feed INTEGER NOT NULL,
    position INTEGER NOT NULL,
    part_of TEXT NOT NULL,
    share REAL NOT NULL,
    prepare TEXT NOT NULL, feel TEXT NOT NULL DEFAULT '',
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
CREATE TABLE shop (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL,
    folded TEXT NOT NULL UNIQUE
) STRICT;
CREATE TABLE old_price (
    id INTEGER PRIMARY KEY,
    ingredient_id INTEGER NOT NULL REFERENCES ingredient ON DELETE CASCADE,
    measure TEXT NOT NULL,
    size REAL NOT NULL,
    price_minor INTEGER NOT NULL,
    currency TEXT NOT NULL,
    priced_on TEXT NOT NULL,
    shop TEXT NOT NULL
) STRICT;
CREATE UNIQUE INDEX old_price_once ON old_price (ingredient_id, measure, size, shop, priced_on, price_minor, currency);
CREATE TABLE stock_item (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL,
    folded TEXT NOT NULL UNIQUE,
    kind TEXT NOT NULL,
    last_on TEXT NOT NULL,
    left_mg INTEGER NOT NULL DEFAULT 0 CHECK (left_mg >= 0)
, over_mg INTEGER NOT NULL DEFAULT 0 CHECK (over_mg >= 0)) STRICT;
CREATE INDEX stock_item_held ON stock_item (id) WHERE left_mg > 0;
CREATE TABLE stock_lot (
    id INTEGER PRIMARY KEY,
    item_id INTEGER NOT NULL REFERENCES stock_item,
    state TEXT NOT NULL,
    got_on TEXT NOT NULL,
    best_before TEXT,
    opened_on TEXT,
    refrozen INTEGER NOT NULL,
    left_mg INTEGER NOT NULL DEFAULT 0 CHECK (left_mg >= 0),
    paid_minor INTEGER,
    currency TEXT,
    shop TEXT NOT NULL, feel TEXT, over_mg INTEGER NOT NULL DEFAULT 0 CHECK (over_mg >= 0), mark TEXT NOT NULL DEFAULT '',
    CHECK ((paid_minor IS NULL) = (currency IS NULL))
) STRICT;
CREATE INDEX stock_lot_of_item ON stock_lot (item_id);
CREATE INDEX stock_lot_in_turn ON stock_lot (item_id, ifnull(best_before, '~'), got_on, id) WHERE left_mg > 0;
CREATE INDEX stock_lot_by_date ON stock_lot (ifnull(best_before, '~'), got_on, id) WHERE left_mg > 0;
CREATE TABLE stock_entry (
    id INTEGER PRIMARY KEY,
    what TEXT NOT NULL,
    happened_on TEXT NOT NULL,
    item_id INTEGER REFERENCES stock_item,
    session TEXT NOT NULL,
    undoes INTEGER UNIQUE REFERENCES stock_entry
, mark TEXT NOT NULL DEFAULT '') STRICT;
CREATE INDEX stock_entry_counted ON stock_entry (item_id) WHERE what = 'counted';
CREATE TABLE stock_movement (
    entry_id INTEGER NOT NULL REFERENCES stock_entry,
    lot_id INTEGER NOT NULL REFERENCES stock_lot,
    milligrams INTEGER NOT NULL,
    PRIMARY KEY (entry_id, lot_id)
) STRICT, WITHOUT ROWID;
CREATE INDEX stock_movement_of_lot ON stock_movement (lot_id);
CREATE TRIGGER stock_movement_stays BEFORE UPDATE ON stock_movement BEGIN
    SELECT RAISE(ABORT, 'a movement is never changed');
END;
CREATE TRIGGER stock_movement_is_kept BEFORE DELETE ON stock_movement BEGIN
    SELECT RAISE(ABORT, 'a movement is never erased');
END;
CREATE TRIGGER stock_entry_is_kept BEFORE DELETE ON stock_entry BEGIN
    SELECT RAISE(ABORT, 'an entry of the ledger is never erased');
END;
CREATE TABLE usual (
    key TEXT NOT NULL,
    position INTEGER NOT NULL,
    value TEXT NOT NULL,
    PRIMARY KEY (key, position)
) STRICT, WITHOUT ROWID;
CREATE TABLE written (
    kind TEXT NOT NULL,
    folded TEXT NOT NULL,
    name TEXT NOT NULL,
    text TEXT NOT NULL,
    owner TEXT NOT NULL,
    PRIMARY KEY (kind, folded)
) STRICT, WITHOUT ROWID;
CREATE TABLE gone (
    kind TEXT NOT NULL,
    folded TEXT NOT NULL,
    name TEXT NOT NULL,
    became TEXT NOT NULL,
    became_folded TEXT NOT NULL,
    PRIMARY KEY (kind, folded)
) STRICT, WITHOUT ROWID;
CREATE INDEX gone_by_new_name ON gone (kind, became_folded);
CREATE TABLE price_of_removed (
    id INTEGER PRIMARY KEY,
    folded TEXT NOT NULL,
    measure TEXT NOT NULL,
    size REAL NOT NULL,
    price_minor INTEGER NOT NULL,
    currency TEXT NOT NULL,
    priced_on TEXT NOT NULL,
    shop TEXT NOT NULL
) STRICT;
CREATE INDEX price_of_removed_by_name ON price_of_removed (folded);
CREATE TABLE log_entry (
    id INTEGER PRIMARY KEY,
    what TEXT NOT NULL,
    happened_on TEXT NOT NULL,
    session_id INTEGER REFERENCES log_session,
    name TEXT NOT NULL,
    folded TEXT NOT NULL,
    at REAL,
    undoes INTEGER UNIQUE REFERENCES log_entry,
    believed INTEGER NOT NULL, mark TEXT NOT NULL DEFAULT '',
    CHECK ((undoes IS NULL) = (what <> 'undone'))
) STRICT;
CREATE INDEX log_entry_of_session ON log_entry (session_id) WHERE session_id IS NOT NULL;
CREATE INDEX log_entry_of_day ON log_entry (happened_on) WHERE what = 'session';
CREATE TABLE log_session (
    entry_id INTEGER PRIMARY KEY REFERENCES log_entry,
    start TEXT NOT NULL,
    length REAL NOT NULL,
    anglers INTEGER NOT NULL,
    page TEXT NOT NULL,
    venue TEXT NOT NULL,
    venue_folded TEXT NOT NULL,
    clarity TEXT NOT NULL,
    temperature REAL,
    cost_minor INTEGER,
    currency TEXT,
    note TEXT NOT NULL,
    CHECK ((cost_minor IS NULL) = (currency IS NULL))
) STRICT;
CREATE TABLE log_use (
    entry_id INTEGER PRIMARY KEY REFERENCES log_entry,
    measure TEXT NOT NULL,
    amount REAL NOT NULL
) STRICT;
CREATE TABLE log_catch (
    entry_id INTEGER PRIMARY KEY REFERENCES log_entry,
    count INTEGER NOT NULL,
    mass REAL
) STRICT;
CREATE TABLE log_mix (
    entry_id INTEGER PRIMARY KEY REFERENCES log_entry,
    feel TEXT NOT NULL,
    wetness REAL,
    within REAL NOT NULL,
    dry REAL,
    water REAL,
    wetting REAL NOT NULL
) STRICT;
CREATE TABLE log_part (
    entry_id INTEGER NOT NULL REFERENCES log_mix,
    position INTEGER NOT NULL,
    name TEXT NOT NULL,
    folded TEXT NOT NULL,
    mass REAL NOT NULL,
    moisture REAL,
    PRIMARY KEY (entry_id, position)
) STRICT, WITHOUT ROWID;
CREATE TABLE log_soak (
    entry_id INTEGER PRIMARY KEY REFERENCES log_entry,
    dry REAL NOT NULL,
    drained REAL NOT NULL,
    under_water REAL NOT NULL,
    temperature REAL NOT NULL
) STRICT;
CREATE TABLE log_weight (
    entry_id INTEGER PRIMARY KEY REFERENCES log_entry,
    feel TEXT NOT NULL,
    vessel REAL NOT NULL,
    mass REAL NOT NULL
) STRICT;
CREATE TABLE log_look (
    entry_id INTEGER PRIMARY KEY REFERENCES log_entry,
    feel TEXT NOT NULL,
    measure TEXT NOT NULL,
    size REAL NOT NULL,
    squeeze TEXT NOT NULL,
    depth REAL NOT NULL,
    holds REAL,
    breaks_at REAL,
    carpet REAL
) STRICT;
CREATE TABLE learnt_water (
    id INTEGER PRIMARY KEY,
    part TEXT NOT NULL,
    name TEXT NOT NULL,
    folded TEXT NOT NULL,
    mean REAL NOT NULL,
    mixes INTEGER NOT NULL,
    measured REAL NOT NULL,
    factor BLOB NOT NULL
) STRICT;
CREATE UNIQUE INDEX learnt_water_by_name ON learnt_water (folded, part);
CREATE TABLE learnt_mix (
    folded TEXT NOT NULL,
    part TEXT NOT NULL,
    name TEXT NOT NULL,
    mean REAL NOT NULL,
    sigma REAL NOT NULL,
    times INTEGER NOT NULL,
    PRIMARY KEY (folded, part)
) STRICT, WITHOUT ROWID;
CREATE TABLE learnt_water_before (
    id INTEGER PRIMARY KEY,
    part TEXT NOT NULL,
    name TEXT NOT NULL,
    folded TEXT NOT NULL,
    mean REAL NOT NULL,
    mixes INTEGER NOT NULL,
    measured REAL NOT NULL,
    factor BLOB NOT NULL
) STRICT;
CREATE TABLE learnt_mix_before (
    folded TEXT NOT NULL,
    part TEXT NOT NULL,
    name TEXT NOT NULL,
    mean REAL NOT NULL,
    sigma REAL NOT NULL,
    times INTEGER NOT NULL,
    PRIMARY KEY (folded, part)
) STRICT, WITHOUT ROWID;
CREATE TABLE learnt_written (
    folded TEXT PRIMARY KEY,
    name TEXT NOT NULL,
    text_before TEXT NOT NULL,
    text_after TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE TRIGGER log_entry_stays BEFORE UPDATE OF id, what, happened_on, session_id, at, undoes ON log_entry BEGIN
    SELECT RAISE(ABORT, 'an entry of the log is never changed');
END;
CREATE TRIGGER log_entry_is_kept BEFORE DELETE ON log_entry BEGIN
    SELECT RAISE(ABORT, 'an entry of the log is never erased');
END;
CREATE TRIGGER log_session_stays BEFORE UPDATE OF entry_id, start, length, anglers, page, clarity, temperature,
    cost_minor, currency, note ON log_session BEGIN
    SELECT RAISE(ABORT, 'an entry of the log is never changed');
END;
CREATE TRIGGER log_session_is_kept BEFORE DELETE ON log_session BEGIN
    SELECT RAISE(ABORT, 'an entry of the log is never erased');
END;
CREATE TRIGGER log_use_stays BEFORE UPDATE ON log_use BEGIN
    SELECT RAISE(ABORT, 'an entry of the log is never changed');
END;
CREATE TRIGGER log_use_is_kept BEFORE DELETE ON log_use BEGIN
    SELECT RAISE(ABORT, 'an entry of the log is never erased');
END;
CREATE TRIGGER log_catch_stays BEFORE UPDATE ON log_catch BEGIN
    SELECT RAISE(ABORT, 'an entry of the log is never changed');
END;
CREATE TRIGGER log_catch_is_kept BEFORE DELETE ON log_catch BEGIN
    SELECT RAISE(ABORT, 'an entry of the log is never erased');
END;
CREATE TRIGGER log_mix_stays BEFORE UPDATE ON log_mix BEGIN
    SELECT RAISE(ABORT, 'an entry of the log is never changed');
END;
CREATE TRIGGER log_mix_is_kept BEFORE DELETE ON log_mix BEGIN
    SELECT RAISE(ABORT, 'an entry of the log is never erased');
END;
CREATE TRIGGER log_part_stays BEFORE UPDATE OF entry_id, position, mass, moisture ON log_part BEGIN
    SELECT RAISE(ABORT, 'an entry of the log is never changed');
END;
CREATE TRIGGER log_part_is_kept BEFORE DELETE ON log_part BEGIN
    SELECT RAISE(ABORT, 'an entry of the log is never erased');
END;
CREATE TRIGGER log_soak_stays BEFORE UPDATE ON log_soak BEGIN
    SELECT RAISE(ABORT, 'an entry of the log is never changed');
END;
CREATE TRIGGER log_soak_is_kept BEFORE DELETE ON log_soak BEGIN
    SELECT RAISE(ABORT, 'an entry of the log is never erased');
END;
CREATE TRIGGER log_weight_stays BEFORE UPDATE ON log_weight BEGIN
    SELECT RAISE(ABORT, 'an entry of the log is never changed');
END;
CREATE TRIGGER log_weight_is_kept BEFORE DELETE ON log_weight BEGIN
    SELECT RAISE(ABORT, 'an entry of the log is never erased');
END;
CREATE TRIGGER log_look_stays BEFORE UPDATE ON log_look BEGIN
    SELECT RAISE(ABORT, 'an entry of the log is never changed');
END;
CREATE TRIGGER log_look_is_kept BEFORE DELETE ON log_look BEGIN
    SELECT RAISE(ABORT, 'an entry of the log is never erased');
END;
CREATE TABLE stock_from_notes (
    mark TEXT PRIMARY KEY,
    entry_id INTEGER REFERENCES stock_entry
) STRICT, WITHOUT ROWID;
CREATE TABLE stamp (
    kind TEXT NOT NULL,
    folded TEXT NOT NULL,
    clock INTEGER NOT NULL,
    since INTEGER NOT NULL,
    PRIMARY KEY (kind, folded)
) STRICT, WITHOUT ROWID;
CREATE UNIQUE INDEX stock_lot_by_mark ON stock_lot (mark);
CREATE UNIQUE INDEX stock_entry_by_mark ON stock_entry (mark);
CREATE UNIQUE INDEX log_entry_by_mark ON log_entry (mark);
CREATE TRIGGER stock_movement_counts AFTER INSERT ON stock_movement BEGIN
    UPDATE stock_lot SET left_mg = max(0, left_mg - over_mg + NEW.milligrams),
        over_mg = max(0, over_mg - left_mg - NEW.milligrams) WHERE id = NEW.lot_id;
END;
CREATE TRIGGER stock_lot_counts AFTER UPDATE OF left_mg, over_mg ON stock_lot BEGIN
    UPDATE stock_item SET left_mg = left_mg + NEW.left_mg - OLD.left_mg, over_mg = over_mg + NEW.over_mg - OLD.over_mg
        WHERE id = NEW.item_id;
END;
CREATE TRIGGER stock_entry_stays BEFORE UPDATE OF id, what, happened_on, session, undoes ON stock_entry BEGIN
    SELECT RAISE(ABORT, 'an entry of the ledger is never changed');
END;
