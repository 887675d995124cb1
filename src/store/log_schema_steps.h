#pragma once

/// What version 6 of the store's tables adds to the one before. It is never changed.
namespace baitwright {

// The log, and what was learnt from it. `log_entry` has what entries have in common: what it is of (`name`, which
// follows a rename, and `folded` with it) and `at`, seconds since the start. A table for each kind has the rest;
// put-ins, bags and undoings have none. Quantities are in SI units, null where they were not said. But for names and
// `believed`, nothing of an entry is ever changed. `part` of what was learnt of water is hand, memory, absorption or
// gap, and `factor` its row of the square root of the covariance, in little-endian doubles; `measured` is the mark that
// the person had measured, 0 for none; of a mix it is cup_weight, hold or carpet. What ends in _before is what stood
// before what was learnt last was written, and `learnt_written` the ingredients that it changed, as TOML.
inline constexpr const char* version_6 = R"sql(
CREATE TABLE log_entry (
    id INTEGER PRIMARY KEY,
    what TEXT NOT NULL,
    happened_on TEXT NOT NULL,
    session_id INTEGER REFERENCES log_session,
    name TEXT NOT NULL,
    folded TEXT NOT NULL,
    at REAL,
    undoes INTEGER UNIQUE REFERENCES log_entry,
    believed INTEGER NOT NULL,
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
)sql";

}  // namespace baitwright
