-- Drafts of spoken words that the inspector dropped, or kept otherwise than they were read, so that they are not offered again.

CREATE TABLE dropped_draft (
    id       INTEGER PRIMARY KEY,
    photo_id INTEGER NOT NULL REFERENCES photo (id),
    at_s     REAL NOT NULL CHECK (at_s >= 0 AND at_s <= 1e9),
    what     TEXT NOT NULL CHECK (trim(what) <> ''),
    said     TEXT NOT NULL,
    text     TEXT NOT NULL,
    instead  TEXT
) STRICT;
