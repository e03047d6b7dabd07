-- One visit to one car. Words of closed lists stand as words; the reader refuses a word it does not know.
-- Times of a camera are local times without offset; an instant ends in Z. Lengths of pictures are pixels of the upright photo.

CREATE TABLE visit (
    id             INTEGER PRIMARY KEY CHECK (id = 1),
    made_at        TEXT NOT NULL,
    car            TEXT NOT NULL CHECK (trim(car) <> ''),
    style          TEXT NOT NULL,
    construction   TEXT NOT NULL,
    engine         TEXT NOT NULL,
    drive          TEXT NOT NULL,
    finish         TEXT NOT NULL,
    model_year     INTEGER CHECK (model_year BETWEEN 1800 AND 9999),
    built          TEXT,
    substrate      TEXT NOT NULL,
    wheelbase_mm   INTEGER CHECK (wheelbase_mm BETWEEN 1 AND 100000),
    length_mm      INTEGER CHECK (length_mm BETWEEN 1 AND 100000),
    width_mm       INTEGER CHECK (width_mm BETWEEN 1 AND 100000),
    height_mm      INTEGER CHECK (height_mm BETWEEN 1 AND 100000),
    timezone       TEXT NOT NULL,
    inspector      TEXT,
    client         TEXT,
    visit_date     TEXT,
    place          TEXT,
    odometer       TEXT,
    light          TEXT,
    lifted         TEXT,
    taken_apart    TEXT,
    claimed        TEXT,
    gauge_range_um REAL NOT NULL CHECK (gauge_range_um > 0 AND gauge_range_um <= 1e9)
) STRICT;

CREATE TABLE zone_substrate (
    id        INTEGER PRIMARY KEY,
    zone      TEXT NOT NULL UNIQUE,
    substrate TEXT NOT NULL
) STRICT;

CREATE TABLE photo (
    id                INTEGER PRIMARY KEY,
    name              TEXT NOT NULL CHECK (name <> ''),
    stored            TEXT NOT NULL CHECK (stored <> ''),
    sha256            TEXT NOT NULL UNIQUE CHECK (length(sha256) = 64),
    bytes             INTEGER NOT NULL CHECK (bytes >= 0),
    kind              TEXT NOT NULL,
    type              TEXT NOT NULL,
    captured_time     TEXT,
    captured_fraction TEXT,
    captured_offset   TEXT,
    captured_source   TEXT,
    captured_suspect  INTEGER CHECK (captured_suspect IN (0, 1)),
    gps_utc           TEXT,
    latitude_deg      REAL CHECK (latitude_deg BETWEEN -90 AND 90),
    longitude_deg     REAL CHECK (longitude_deg BETWEEN -180 AND 180),
    camera            TEXT CHECK (trim(camera) <> ''),
    width_px          INTEGER CHECK (width_px >= 0),
    height_px         INTEGER CHECK (height_px >= 0),
    orientation       INTEGER NOT NULL CHECK (orientation BETWEEN 1 AND 8),
    film_s            REAL CHECK (film_s BETWEEN 0 AND 1e9),
    sharpness         REAL CHECK (sharpness BETWEEN 0 AND 1e300),
    set_aside         TEXT,
    CHECK ((latitude_deg IS NULL) = (longitude_deg IS NULL)),
    CHECK ((captured_time IS NULL) = (captured_source IS NULL)
       AND (captured_time IS NULL) = (captured_fraction IS NULL)
       AND (captured_time IS NULL) = (captured_suspect IS NULL))
) STRICT;

CREATE TABLE intake_remark (
    id       INTEGER PRIMARY KEY,
    photo_id INTEGER NOT NULL REFERENCES photo (id) ON DELETE CASCADE,
    ordinal  INTEGER NOT NULL CHECK (ordinal >= 0),
    remark   TEXT NOT NULL,
    UNIQUE (photo_id, ordinal)
) STRICT;

CREATE TABLE pin (
    id       INTEGER PRIMARY KEY,
    photo_id INTEGER NOT NULL REFERENCES photo (id),
    zone     TEXT NOT NULL,
    at_s     REAL CHECK (at_s BETWEEN 0 AND 1e9),
    view     TEXT,
    x        REAL CHECK (x BETWEEN 0 AND 1),
    y        REAL CHECK (y BETWEEN 0 AND 1),
    shows    TEXT,
    caption  TEXT,
    mark     TEXT,
    CHECK ((view IS NULL) = (x IS NULL) AND (view IS NULL) = (y IS NULL))
) STRICT;
CREATE INDEX pin_by_photo ON pin (photo_id);

CREATE TABLE reading (
    id           INTEGER PRIMARY KEY,
    zone         TEXT NOT NULL,
    outcome      TEXT NOT NULL CHECK (outcome IN ('measured', 'none', 'over')),
    typed        TEXT,
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
    CHECK ((outcome = 'measured') = (typed IS NOT NULL)
       AND (typed IS NULL) = (unit IS NULL)
       AND (typed IS NULL) = (thickness_um IS NULL)),
    CHECK ((view IS NULL) = (x IS NULL) AND (view IS NULL) = (y IS NULL))
) STRICT;

CREATE TABLE gauge_check (
    id                      INTEGER PRIMARY KEY,
    moment                  TEXT NOT NULL,
    surface                 TEXT NOT NULL,
    nominal_typed           TEXT NOT NULL,
    nominal_unit            TEXT NOT NULL,
    nominal_um              REAL NOT NULL CHECK (nominal_um BETWEEN -1e9 AND 1e9),
    shown_typed             TEXT NOT NULL,
    shown_unit              TEXT NOT NULL,
    shown_um                REAL NOT NULL CHECK (shown_um BETWEEN -1e9 AND 1e9),
    nominal_tolerance_um    REAL CHECK (nominal_tolerance_um BETWEEN 0 AND 1e9),
    gauge_tolerance_percent REAL CHECK (gauge_tolerance_percent BETWEEN 0 AND 1e9),
    gauge_tolerance_um      REAL CHECK (gauge_tolerance_um BETWEEN 0 AND 1e9),
    note                    TEXT
) STRICT;

CREATE TABLE sign (
    id         INTEGER PRIMARY KEY,
    zone       TEXT NOT NULL,
    kind       TEXT NOT NULL,
    seen       INTEGER NOT NULL CHECK (seen IN (0, 1)),
    speaks_for TEXT,
    photo_id   INTEGER REFERENCES photo (id),
    note       TEXT
) STRICT;

CREATE TABLE trace (
    id          INTEGER PRIMARY KEY,
    photo_id    INTEGER NOT NULL REFERENCES photo (id),
    kind        TEXT NOT NULL,
    outline_px  TEXT NOT NULL CHECK (outline_px LIKE 'POLYGON %'),
    scale_px_mm TEXT NOT NULL CHECK (scale_px_mm LIKE 'length:%' OR scale_px_mm LIKE 'rectangle:%'),
    zone        TEXT NOT NULL,
    patch       TEXT,
    note        TEXT
) STRICT;
CREATE INDEX trace_by_photo ON trace (photo_id);

CREATE TABLE mark (
    id       INTEGER PRIMARY KEY,
    part     TEXT NOT NULL CHECK (trim(part) <> ''),
    kind     TEXT NOT NULL,
    text     TEXT NOT NULL CHECK (trim(text) <> ''),
    stage    TEXT,
    pattern  TEXT,
    expected TEXT,
    zone     TEXT,
    view     TEXT,
    x        REAL CHECK (x BETWEEN 0 AND 1),
    y        REAL CHECK (y BETWEEN 0 AND 1),
    photo_id INTEGER REFERENCES photo (id),
    note     TEXT,
    CHECK ((view IS NULL) = (x IS NULL) AND (view IS NULL) = (y IS NULL))
) STRICT;

CREATE TABLE trial (
    id     INTEGER PRIMARY KEY,
    item   TEXT NOT NULL CHECK (trim(item) <> ''),
    result TEXT NOT NULL,
    value  TEXT,
    unit   TEXT,
    zone   TEXT,
    note   TEXT
) STRICT;

CREATE TABLE statement (
    id       INTEGER PRIMARY KEY,
    zone     TEXT NOT NULL,
    kind     TEXT NOT NULL,
    text     TEXT NOT NULL,
    severity TEXT,
    basis    TEXT,
    photo_id INTEGER REFERENCES photo (id)
) STRICT;

CREATE TABLE feature (
    id         INTEGER PRIMARY KEY,
    feature    TEXT NOT NULL CHECK (trim(feature) <> ''),
    built_from TEXT NOT NULL,
    built_to   TEXT NOT NULL,
    fitted     INTEGER CHECK (fitted IN (0, 1)),
    zone       TEXT,
    note       TEXT
) STRICT;

CREATE TABLE clock_setting (
    id             INTEGER PRIMARY KEY,
    camera         TEXT NOT NULL UNIQUE CHECK (trim(camera) <> ''),
    shift_duration TEXT NOT NULL,
    timezone       TEXT
) STRICT;

CREATE TABLE edit_log (
    id      INTEGER PRIMARY KEY,
    at      TEXT NOT NULL,
    label   TEXT NOT NULL,
    summary TEXT NOT NULL
) STRICT;
