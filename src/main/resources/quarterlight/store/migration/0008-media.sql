-- Papers, sounds, words and sidecars are kept beside photos and films: the pages of a paper, what a file lay beside (its hash), what a sidecar
-- says of its photo. What a buyer gets of them is released row by row.

ALTER TABLE photo ADD COLUMN pages INTEGER CHECK (pages BETWEEN 1 AND 1000000);
ALTER TABLE photo ADD COLUMN beside TEXT CHECK (length(beside) = 64);
ALTER TABLE photo ADD COLUMN caption TEXT CHECK (caption <> '');
ALTER TABLE photo ADD COLUMN keywords TEXT CHECK (keywords <> '');
ALTER TABLE photo ADD COLUMN rating INTEGER CHECK (rating BETWEEN -1 AND 5);
ALTER TABLE photo ADD COLUMN turned INTEGER CHECK (turned BETWEEN 1 AND 8);

CREATE TABLE released (
    id       INTEGER PRIMARY KEY,
    photo_id INTEGER NOT NULL REFERENCES photo (id)
) STRICT;
