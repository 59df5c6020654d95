"""Cautions that several tools share, so that the same danger is told in the same words."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .answer import Answer

SHARPEST = 50.0
"""Degrees off square that most miter saws reach, about: common practice, no source."""

SAW = (
    "Keep guards on and both hands clear of the blade's path; hold the piece to fence and table, "
    "never freehand. Let the blade stop before you reach for a small offcut."
)
TEST_CUT = (
    "Cut a test corner in scrap first: settings are arithmetic, walls and saw scales are not."
)
SHARP_MITER = (
    "A setting past about 50° is beyond most miter saws: use a jig that holds the piece to the "
    "fence, clamped, and never hold a sharp point by hand."
)
PLANER = (
    "Planer and jointer: nothing shorter, thinner or narrower than the machine's maker allows, "
    "push blocks on the jointer, and look over used stock for nails and grit first."
)
SHALLOW = (
    "Better shallow than deep: a shallow mortise is pared again in a minute, one cut too deep "
    "binds the door and has to be shimmed."
)
HEAVY_DOOR = (
    "A door is heavy and tips easily: lift it with two people, prop it before you let go, and "
    "drive a screw in every hinge leaf before you take the weight off."
)
FIRE_DOOR = (
    "Fire-rated doors and frames: their label and the local code decide hinges, gaps and what "
    "may be cut; ask the authority before you touch one."
)
LEAD_PAINT = (
    "Paint in a house built before 1978 may hold lead. The EPA's rule for paid work begins above "
    "6 sq ft a room inside or 20 sq ft outside; a part taken off counts whole, and windows and "
    "demolition always count. Ask before you sand, and check your state's own rule."
)
FLAMMABLE_FINISH = (
    "Solvent finishes burn and their vapor does too: no flame, no spark, no pilot light, moving "
    "air, and a booth by its code where you spray; the label and the local fire code decide."
)
OIL_RAGS = (
    "Rags with oil finish catch fire by themselves: under water in a closed metal can, or flat and "
    "single outdoors till they are hard."
)
ISOCYANATES = (
    "Two-part finishes with isocyanate give no warning by smell and the harm stays: supplied air, "
    "not a cartridge."
)
SPRAY_MIST = (
    "Spray mist, of water-borne finish too, calls for extraction and a fitted respirator of the "
    "kind that the safety data sheet names."
)
FINISH_VAPORS = (
    "Limits on vapors (VOC) differ by state and air district, for the shop and on site: check "
    "yours before you buy or thin."
)
SANDING_DUST = (
    "Sanding dust of wood and finish: extraction at the tool and a fitted particulate respirator; "
    "some woods and fillers sensitize."
)


def warn_if_sharp(answer: "Answer", *settings: float) -> None:
    """Add the caution about sharp settings if one, in degrees either way, is past the reach."""
    if max([abs(setting) for setting in settings]) > SHARPEST:
        answer.caution(SHARP_MITER)
