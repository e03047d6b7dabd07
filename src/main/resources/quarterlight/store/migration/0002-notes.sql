-- Notes on photos, hidden regions, what must be covered and what is left out; what the inspector chose for the pages.

ALTER TABLE visit ADD COLUMN gauge_correction INTEGER NOT NULL DEFAULT 0 CHECK (gauge_correction IN (0, 1));
ALTER TABLE visit ADD COLUMN diagram TEXT;
ALTER TABLE visit ADD COLUMN terms TEXT;
ALTER TABLE visit ADD COLUMN limits TEXT;
ALTER TABLE visit ADD COLUMN report_length TEXT NOT NULL DEFAULT 'full';

ALTER TABLE photo ADD COLUMN content_id TEXT;
ALTER TABLE mark ADD COLUMN lead_days INTEGER CHECK (lead_days BETWEEN 0 AND 1000000);
ALTER TABLE statement ADD COLUMN at_s REAL CHECK (at_s BETWEEN 0 AND 1e9);

-- A trace may bear a coin for its scale: a check is changed only by making the table anew.
CREATE TABLE new_trace (
    id          INTEGER PRIMARY KEY,
    photo_id    INTEGER NOT NULL REFERENCES photo (id),
    kind        TEXT NOT NULL,
    outline_px  TEXT NOT NULL CHECK (outline_px LIKE 'POLYGON %'),
    scale_px_mm TEXT NOT NULL CHECK (scale_px_mm LIKE 'length:%' OR scale_px_mm LIKE 'rectangle:%'
                                  OR scale_px_mm LIKE 'coin:%'),
    zone        TEXT NOT NULL,
    patch       TEXT,
    note        TEXT
) STRICT;
INSERT INTO new_trace (id, photo_id, kind, outline_px, scale_px_mm, zone, patch, note)
    SELECT id, photo_id, kind, outline_px, scale_px_mm, zone, patch, note FROM trace;
DROP TABLE trace;
ALTER TABLE new_trace RENAME TO trace;
CREATE INDEX trace_by_photo ON trace (photo_id);

CREATE TABLE photo_note (
    id          INTEGER PRIMARY KEY,
    photo_id    INTEGER NOT NULL REFERENCES photo (id),
    at_s        REAL CHECK (at_s BETWEEN 0 AND 1e9),
    shape       TEXT NOT NULL,
    points_px   TEXT NOT NULL CHECK (points_px <> ''),
    text        TEXT,
    scale_px_mm TEXT CHECK (scale_px_mm LIKE 'length:%' OR scale_px_mm LIKE 'rectangle:%' OR scale_px_mm LIKE 'coin:%')
) STRICT;
CREATE INDEX photo_note_by_photo ON photo_note (photo_id);

CREATE TABLE hidden_region (
    id         INTEGER PRIMARY KEY,
    photo_id   INTEGER NOT NULL REFERENCES photo (id),
    outline_px TEXT NOT NULL CHECK (outline_px LIKE 'POLYGON %'),
    why        TEXT
) STRICT;
CREATE INDEX hidden_region_by_photo ON hidden_region (photo_id);

CREATE TABLE coverage_wish (
    id       INTEGER PRIMARY KEY,
    zone     TEXT,
    evidence TEXT NOT NULL CHECK (trim(evidence) <> ''),
    want     INTEGER NOT NULL CHECK (want BETWEEN 0 AND 1000)
) STRICT;

CREATE TABLE left_out (
    id       INTEGER PRIMARY KEY,
    zone     TEXT,
    photo_id INTEGER REFERENCES photo (id),
    CHECK ((zone IS NULL) <> (photo_id IS NULL))
) STRICT;
