#pragma once

/// What version 8 of the store's tables adds to the one before. It is never changed.
namespace baitwright {

// What two stores that are brought together know each other's rows by. `mark` is 32 hexadecimal digits: random, but
// for what came with notes, whose mark is a digest of what they said, so that it is the same wherever they are taken
// in; and for an undoing, whose mark is that of what it takes back with its halves changed over: it is taken back once.
// Rows from before this version get a digest of what they hold, so that copies of one store agree. `over_mg` is what
// was used of a lot, in two stores, beyond what was in it. `stamp` has when an entry of the library (`kind` and
// `folded`), the packs of an ingredient, what is usual or what was learnt last changed: by `clock` of `meta`, which
// counts the changes of all stores that this one has met; and `since` when there came to be an entry of that name.
// What has no stamp is as it was shipped.
inline constexpr const char* version_8 = R"sql(
ALTER TABLE stock_item ADD COLUMN over_mg INTEGER NOT NULL DEFAULT 0 CHECK (over_mg >= 0);
ALTER TABLE stock_lot ADD COLUMN over_mg INTEGER NOT NULL DEFAULT 0 CHECK (over_mg >= 0);
ALTER TABLE stock_lot ADD COLUMN mark TEXT NOT NULL DEFAULT '';
ALTER TABLE stock_entry ADD COLUMN mark TEXT NOT NULL DEFAULT '';
ALTER TABLE log_entry ADD COLUMN mark TEXT NOT NULL DEFAULT '';
CREATE TABLE stamp (
    kind TEXT NOT NULL,
    folded TEXT NOT NULL,
    clock INTEGER NOT NULL,
    since INTEGER NOT NULL,
    PRIMARY KEY (kind, folded)
) STRICT, WITHOUT ROWID;
INSERT INTO meta VALUES ('clock', '1');
INSERT INTO stamp SELECT 'ingredient', folded, 1, 0 FROM ingredient WHERE owner = 'person';
INSERT INTO stamp SELECT 'mix', folded, 1, 0 FROM recipe WHERE owner = 'person';
INSERT INTO stamp SELECT 'strategy', folded, 1, 0 FROM strategy WHERE owner = 'person';
INSERT INTO stamp SELECT kind, folded, 1, 0 FROM written WHERE owner = 'person';
INSERT INTO stamp SELECT 'feel', folded, 1, 0 FROM feel WHERE owner = 'person';
INSERT OR IGNORE INTO stamp SELECT kind, folded, 1, 0 FROM gone;
INSERT INTO stamp SELECT DISTINCT 'usual', key, 1, 0 FROM usual;
INSERT INTO stamp SELECT 'learnt', '', 1, 0 WHERE EXISTS (SELECT 1 FROM learnt_water)
    OR EXISTS (SELECT 1 FROM learnt_mix) OR EXISTS (SELECT 1 FROM learnt_written);
DROP TRIGGER stock_movement_counts;
DROP TRIGGER stock_entry_stays;
UPDATE stock_lot SET mark = mark_of('lot', id, (SELECT i.folded FROM stock_item i WHERE i.id = item_id), state, got_on,
    best_before, refrozen, paid_minor, currency, shop, feel);
UPDATE stock_entry SET mark = mark_of('shed', id, what, happened_on, session,
    (SELECT group_concat(l.mark || m.milligrams) FROM stock_movement m JOIN stock_lot l ON l.id = m.lot_id
        WHERE m.entry_id = stock_entry.id))
    WHERE undoes IS NULL;
UPDATE stock_entry SET mark = mark_of('shed from notes', n.mark) FROM stock_from_notes n
    WHERE n.entry_id = stock_entry.id AND undoes IS NULL;
UPDATE stock_lot SET mark = mark_of('lot of', e.mark)
    FROM stock_from_notes n JOIN stock_entry e ON e.id = n.entry_id JOIN stock_movement m ON m.entry_id = e.id
    WHERE e.what = 'bought' AND stock_lot.id = m.lot_id;
UPDATE stock_entry SET mark = substr(u.mark, 17) || substr(u.mark, 1, 16) FROM stock_entry u
    WHERE u.id = stock_entry.undoes;
UPDATE log_entry SET mark = mark_of('log', id, what, happened_on, session_id, folded, at,
    (SELECT mark_of(start, length, anglers, page, venue_folded, note) FROM log_session WHERE entry_id = log_entry.id),
    (SELECT mark_of(measure, amount) FROM log_use WHERE entry_id = log_entry.id),
    (SELECT mark_of(count, mass) FROM log_catch WHERE entry_id = log_entry.id),
    (SELECT mark_of(feel, dry, water) FROM log_mix WHERE entry_id = log_entry.id),
    (SELECT mark_of(dry, drained, under_water, temperature) FROM log_soak WHERE entry_id = log_entry.id),
    (SELECT mark_of(feel, vessel, mass) FROM log_weight WHERE entry_id = log_entry.id),
    (SELECT mark_of(feel, measure, size, squeeze, depth, holds, breaks_at, carpet) FROM log_look
        WHERE entry_id = log_entry.id))
    WHERE undoes IS NULL;
UPDATE log_entry SET mark = p.mark
    FROM (SELECT s.entry_id, mark_of('session from notes', s.page, e.happened_on,
            row_number() OVER (PARTITION BY s.page, e.happened_on ORDER BY s.entry_id)) AS mark
        FROM log_session s JOIN log_entry e ON e.id = s.entry_id WHERE s.page <> '') p
    WHERE p.entry_id = log_entry.id;
UPDATE log_entry SET mark = p.mark
    FROM (SELECT id, mark_of('from notes', session, what, folded, at, told,
            row_number() OVER (PARTITION BY session, what, folded, at, told ORDER BY id)) AS mark
        FROM (SELECT e.id, o.mark AS session, e.what, e.folded, e.at, mark_of(
            (SELECT mark_of(measure, amount) FROM log_use WHERE entry_id = e.id),
            (SELECT mark_of(count, mass) FROM log_catch WHERE entry_id = e.id),
            (SELECT mark_of(feel, dry, water) FROM log_mix WHERE entry_id = e.id),
            (SELECT mark_of(dry, drained, under_water, temperature) FROM log_soak WHERE entry_id = e.id),
            (SELECT mark_of(feel, vessel, mass) FROM log_weight WHERE entry_id = e.id),
            (SELECT mark_of(feel, measure, size, squeeze, depth, holds, breaks_at, carpet) FROM log_look
                WHERE entry_id = e.id)) AS told
            FROM log_entry e JOIN log_session s ON s.entry_id = e.session_id JOIN log_entry o ON o.id = s.entry_id
            WHERE s.page <> '' AND e.undoes IS NULL)) p
    WHERE p.id = log_entry.id;
UPDATE log_entry SET mark = substr(u.mark, 17) || substr(u.mark, 1, 16) FROM log_entry u
    WHERE u.id = log_entry.undoes;
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
)sql";

}  // namespace baitwright
