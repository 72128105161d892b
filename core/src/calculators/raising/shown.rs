//! All that a person reads of a raised ceiling once it is worked out.

use crate::words;

words! {
    STUD = "Studs to cut";
    CRIPPLE = "Short studs to cut";
    BOARD = "Ceiling board";
    FRAMING = "Subfloor to joists now";
    FRAMING_TO_BE = "Subfloor to joists to be";
    NOW = "Finished height now";
    TO_BE = "Finished height to be";
    HIGHEST = "Finished height, highest";
    HIGHER = "Finished ceiling goes up";
    RAISE = "Joists go up";
    WHOLE_STUD = "A stud over the whole height";
    PRECUT = "Precut stud to buy";
    BY_THE_FOOT = "Lumber to buy";
    CUT_OFF = "Cut off it";
    STUDS = "Studs along the walls, before doors and corners";
    PERIMETER = "Walls that go up";
    FLOOR = "Floor";
    INFILL = "Wall to fill in";
    AIR = "Air added";
    AIR_TRAY = "Air in the tray";
    TRAY_LONG = "Tray opening, length";
    TRAY_WIDE = "Tray opening, width";
    LID_LONG = "Tray top, length";
    LID_WIDE = "Tray top, width";
    SLANT = "Along a side";
    SIDES = "Tray sides";
    OPENING = "Tray opening";
    TOP = "Tray top";
    RISE = "Rise over the low wall";
    SLOPE = "Along the slope";
    ENDS = "Both end walls, triangles";
    HIGH_WALL = "High wall, above today's";
    UPRIGHT = "Wall to fill in, ends and high side";
    STRIP_5 = "Low wall to 5 ft high";
    STRIP_7 = "Low wall to 7 ft high";
    COUNTED = "Floor that counts, 5 ft and more";
    FULL = "Floor under 7 ft and more";
    FULL_SHARE = "Share of what counts";

    CHECK_HEIGHT = "Ceiling height to be";
    CHECK_BORDER = "Height under the border";
    CHECK_LOW = "Height at the low wall";
    CHECK_ROOM = "Floor that counts";
    CHECK_REQUIRED = "7 ft high: half of the 70 sq ft required";
    CHECK_COUNTED = "7 ft high: half of all that counts";
    CHECK_OVERHEAD = "Moving what is overhead";
    CHECK_STUD = "Stud height";
    CHECK_JOINT = "Joints in a wall's height";
    CHECK_FAN = "Fan blades over the floor";
    CHECK_BEAM = "Beam or duct over the floor";
    CHECK_DOOR = "Door header over the subfloor";

    ASK_BORDER = "An old height may often stay: ask.";
    ASK_LOW = "6 ft 8 in is needed where fixtures are used and at a shower: ask where they stand.";
    ASK_SMALL = "The 70 sq ft hold for rooms to live in; halls and kitchens are other: ask.";
    ASK_READING = "It passes by the 70 sq ft, not by half of all that counts. Inspectors differ: ask.";
    ASK_UNKNOWN = "Stop until somebody has looked. If they are trusses, nothing is cut or moved.";
    ASK_STICKS = "Joists often tie the rafters. How far each may move, and what holds the roof meanwhile, an engineer says.";
    ASK_TIES = "A vault takes out the ties: the walls spread and the roof comes down, unless a ridge beam on posts carries it. An engineer draws that first.";
    ASK_STORY = "These joists carry a floor. What holds it instead, an engineer says.";
    ASK_STUD = "Past the table: an engineer designs the wall.";
    ASK_JOINT = "This joint bends under wind, least where the ceiling holds it. Outside walls take studs in one piece, or an engineer's design.";
    ASK_PARTITION = "This joint bends when the wall is pushed or hung from. The rule was read of outside walls: ask of partitions.";
    ASK_GABLE = "A wall under a slope has its studs in one piece up to the slope, or an engineer's design.";
    ASK_FAN = "Makers ask for 7 ft: see your fan's own sheet.";
    ASK_BEAM = "Under 7 ft only beams 3 ft apart, and basements: ask.";
    ASK_DOOR = "A door of 6 ft 8 in may not fit: measure the one you hang.";

    STOP_TRUSSES = "Stop: trusses. Cutting or moving one can bring the roof down; their designer or an engineer draws it first.";
    STOP_UNKNOWN = "Look in the attic first. Cut nothing until you know what is over it.";

    MOVES = "What moves with it";
    MOVES_NOTE = "Each needs length, a new place or a new hole before the board goes up.";
    MOVED = "{0}: {1}";
    MOVED_BY = "{0}: {1} {2}, {3}.";
    NOTHING = "";
    LIGHTS = "Lights";
    LIGHTS_WHY = "Their cables may be too short for the new height: see A cable that hung in the old ceiling.";
    FAN_BOX = "Fan box";
    ALARMS = "Smoke alarms";
    ALARMS_WHY = "They go up too, and the permit brings today's rule for the whole house.";
    HEADERS = "Headers";
    HEADERS_WHY = "They stay where they are: the short studs over them grow.";
    DUCTS = "Registers and ducts";
    DUCTS_WHY = "Boots go up with the board; a duct over it may lose its space.";
    WIRES = "Thermostat, bell and data wires";
    WIRES_WHY = "They run across joists that move.";
    VENTS = "Pipes and vents through it";
    VENTS_WHY = "Fans, flues and stacks keep their clearances.";
    INSULATION = "Attic insulation";
    BLOCKS = "Fireblocks";
    BLOCKS_FLAT = "Close every stud bay at the new line, and at the old one where a ceiling next door stays.";
    BLOCKS_TRAY = "The tray's sides leave stud tops and joist spaces open: close them along all four.";
    BLOCKS_VAULT = "Close stud bays where walls meet the slope, and where a ceiling next door stays.";

    SHEETS = "Sheets on the walls";
    SHEETS_NOTE = "Laid flat, from the ceiling down.";
    WIDE = "{0} wide";
    ROWS = "{0} {0?row|rows}; seams {1} over the floor";
    ROWS_NONE = "{0} {0?row|rows}; no seam";
    AND = "{0}, {1}";
    ONE = "{0}";

    M_STUD = "Stud, cut to {0}";
    M_CRIPPLE = "Short stud, cut to {0}";
    M_PLATE = "Plate, as wide as the wall";
    M_BLOCK = "Fireblock, 2 in lumber";
    M_BOARD = "Gypsum board, ceiling";
    M_WALL_BOARD = "Gypsum board, wall filled in";

    TEST = "Test before you disturb it: texture, plaster, joint compound and loose fill above can hold asbestos, paint lead.";
    LIVE = "Dead, and proved dead, before you touch a cable. Loose fill comes down with the ceiling: look above it first.";
    SHORE = "Shore before you cut. A ceiling's joists may hold walls and roof; an engineer says what and how.";
    PERMIT = "This needs a permit. Local code and the building department decide.";

    DRAWING = "The room cut across, before and after, to scale";
    D_FLOOR = "Finished floor";
    D_WALL = "Wall";
    D_OLD = "Ceiling now";
    D_NEW = "New ceiling";
    D_JOINT = "Old plates, a joint";
    UP = "up {0}";
    L_STUD = "studs {0}";
    L_CRIPPLE = "short studs {0}";
    L_NOW = "now {0}";
    L_TO_BE = "new {0}";
    TWIN_FLAT = "The ceiling goes from {0} to {1} over the floor, {2} up, in a room {3} across.";
    TWIN_STUD = "New studs of {0} stand from plate to plate.";
    TWIN_CRIPPLE = "Short studs of {0} stand on the old plates.";
    TWIN_TRAY = "A border {0} wide stays at {1}. Within it the tray goes up {2} to {3}, its sides leaning in {4}.";
    TWIN_GABLE = "Two slopes go from {0} at the walls up to {1} in the middle of {2}.";
    TWIN_SHED = "One slope goes from {0} at the low wall up to {1} across {2}.";
}
