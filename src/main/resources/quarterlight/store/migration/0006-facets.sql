-- A statement says what something is and how it is, in two columns; of what part, how certainly, who says so and how large; claims and
-- figures of the odometer are rows; a reading may be a range; some rows are private. A check is changed only by making the table anew.

CREATE TABLE new_statement (
    id             INTEGER PRIMARY KEY,
    zone           TEXT NOT NULL,
    origin         TEXT,
    condition      TEXT,
    text           TEXT NOT NULL,
    part           TEXT,
    severity       TEXT,
    certainty      TEXT,
    said_by        TEXT NOT NULL DEFAULT 'inspector',
    basis          TEXT,
    size           TEXT CHECK (trim(size) <> ''),
    photo_id       INTEGER REFERENCES photo (id),
    more_photo_ids TEXT CHECK (more_photo_ids <> '' AND more_photo_ids NOT GLOB '*[^0-9 ]*'),
    at_s           REAL CHECK (at_s BETWEEN 0 AND 1e9),
    private        INTEGER NOT NULL DEFAULT 0 CHECK (private IN (0, 1)),
    withdraws      INTEGER CHECK (withdraws > 0),
    CHECK (origin IS NOT NULL OR condition IS NOT NULL)
) STRICT;
INSERT INTO new_statement (id, zone, origin, condition, text, severity, basis, photo_id, more_photo_ids, at_s)
    SELECT id, zone,
           CASE kind WHEN 'as built' THEN 'original' WHEN 'replaced' THEN 'replaced'
                     WHEN 'does not belong' THEN 'does not belong' END,
           CASE WHEN kind NOT IN ('as built', 'replaced', 'does not belong') THEN kind END,
           text, severity, basis, photo_id, more_photo_ids, at_s
    FROM statement;
DROP TABLE statement;
ALTER TABLE new_statement RENAME TO statement;

CREATE TABLE new_reading (
    id           INTEGER PRIMARY KEY,
    zone         TEXT NOT NULL,
    outcome      TEXT NOT NULL CHECK (outcome IN ('measured', 'range', 'none', 'over')),
    typed        TEXT,
    typed_high   TEXT,
    unit         TEXT,
    thickness_um REAL CHECK (thickness_um BETWEEN -1e9 AND 1e9),
    time         TEXT,
    spot         TEXT,
    view         TEXT,
    x            REAL CHECK (x BETWEEN 0 AND 1),
    y            REAL CHECK (y BETWEEN 0 AND 1),
    mode         TEXT,
    exclude      TEXT,
    note         TEXT,
    private      INTEGER NOT NULL DEFAULT 0 CHECK (private IN (0, 1)),
    CHECK ((outcome IN ('measured', 'range')) = (typed IS NOT NULL)
       AND (outcome = 'range') = (typed_high IS NOT NULL)
       AND (typed IS NULL) = (unit IS NULL)
       AND (outcome = 'measured') = (thickness_um IS NOT NULL)),
    CHECK ((view IS NULL) = (x IS NULL) AND (view IS NULL) = (y IS NULL))
) STRICT;
INSERT INTO new_reading (id, zone, outcome, typed, unit, thickness_um, time, spot, view, x, y, mode, exclude, note)
    SELECT id, zone, outcome, typed, unit, thickness_um, time, spot, view, x, y, mode, exclude, note FROM reading;
DROP TABLE reading;
ALTER TABLE new_reading RENAME TO reading;

ALTER TABLE trial ADD COLUMN private INTEGER NOT NULL DEFAULT 0 CHECK (private IN (0, 1));

CREATE TABLE claim (
    id         INTEGER PRIMARY KEY,
    text       TEXT NOT NULL CHECK (trim(text) <> ''),
    claimant   TEXT NOT NULL,
    zone       TEXT,
    part       TEXT,
    claimed_on TEXT,
    about      TEXT,
    photo_id   INTEGER REFERENCES photo (id),
    judged     TEXT,
    private    INTEGER NOT NULL DEFAULT 0 CHECK (private IN (0, 1))
) STRICT;
INSERT INTO claim (text, claimant) SELECT claimed, 'seller' FROM visit WHERE trim(claimed) <> '';
UPDATE visit SET claimed = NULL;

CREATE TABLE odometer_figure (
    id         INTEGER PRIMARY KEY,
    figure     TEXT NOT NULL,
    unit       TEXT NOT NULL,
    source     TEXT NOT NULL,
    shown_on   TEXT,
    went_round INTEGER NOT NULL DEFAULT 0 CHECK (went_round IN (0, 1)),
    note       TEXT
) STRICT;
