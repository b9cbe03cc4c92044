"""How people say in English what ails their eyes. A name ending in "!" is an emergency whatever else she writes.

Patients' and nurses' words, chat, British and second-language English; collected from the trade's talk and from red-eye
leaflets (common practice, no source). Spelling follows `tokens`: no apostrophes, no accents, no capitals.
"""

from __future__ import annotations

CLASSES = {
    "eye": """eye eyes eyeball eyeballs lid lids eyelid eyelids lashline waterline eyed peeper peepers cornea sclera
        conjunctiva eyez""",
    "my": "my mine the me both this that one left right a an your our her his their each either 1 me upper lower inner outer",
    "be": """is are r was were be been being am im its theyre looks look looking looked feels feel feeling felt got get gets
        getting seems seem has have had went go goes going gone become became turned stays stayed keeps keep kept""",
    "very": """so very really super extremely insanely quite pretty too literally rly totally completely just all still a
        bit little lil kinda real mad proper well hella fully almost slightly both my the in on of like this that""",
    "cant": "cant cannot couldnt unable cnt dont doesnt wont didnt isnt barely hardly trouble difficulty struggling hard",
    "breathe": "breathe breath breathing breathes air",
    "glue": """glue adhesive remover acetone primer bonder cyanoacrylate superglue solvent chemical chemicals tint bleach
        debonder solution dye peroxide alcohol nanomister glu cement""",
    "face": "face lips lip tongue throat mouth neck cheeks jaw airway",
    "swell": """swelling swollen swell swells swelled swole swoll puffy puffed puffing puff puffs puffier inflamed
        ballooned ballooning balloon balloons enlarged bloated edema oedema edematous fat bigger""",
    "huge": "big large huge massive enormous giant thick fatter fat double",
    "sore": "sore soreness pain pains painful painfully hurt hurts hurting hurtin ache aches aching achy tender tenderness",
    "lot": "severe severely unbearable excruciating agony agonizing agonising intense insane intolerable unreal worst",
}

SIGNS = {
    "redness": """
        ciliary flush, flush, flushing, red hot, pinky, ruddy, pinkie,
        red, redness, reddish, reddened, reddening, redder, pink, pinkish, pinkness, pinker, bloodshot, erythema,
        erythematous, hyperemia, hyperaemia, conjunctival injection, injected, <eye> .. like tomato{es/}, pinkeye,
        veins .. <eye>, veiny, <eye> .. flushed, crimson, <eye> look .. stoned|high, rosy <eye>, <eye> .. rosy,
        look .. been crying, look like i .. smok{ed/ing}, <eye> .. scarlet, rubor, burst blood vessel{s/}
    """,
    "redness!": """
        dark red, deep red, blood red, very dark red, deepest red, solid red, fire engine red,
        <eye> .. full|filled of|with blood, blood in .. <eye>, dark red .. <eye>, white{s/} .. <eye> .. blood, beet red,
        cherry red, maroon, subconjunctival hemorrhage|haemorrhage, hyphema
    """,
    "swelling": """
        lump on .. lid{s/}|eyelid{s/}, lump .. lash line, pimple looking lump, lump .. lid, bump like a pimple on .. lid, bump .. pea, stye looking thing, lids .. up a bit, lid{s/} .. come up .. puffy|big|huge|like|swollen|fat, eye{s/} .. come up .. puffy|big|huge|like|swollen|fat, lids up, like i cried all night, swoll up, hooded, <eye> .. balloon, eye{s/} .. size of, bloated, <eye> .. <huge> .. normal, lids .. thick, lids .. heavy,
        swelling, swollen, swell, swells, swelled, swole, swoll, puffy, puffiness, puffed, puffing, puff up, puffs up,
        puffier, inflamed, inflammation, edema, oedema, edematous, oedematous, chemosis, ballooned, ballooning,
        <eye> .. like|size balloon{s/}|marshmallow{s/}|grape{s/}|golf|golfball{s/}, <eye> twice .. size, double .. size,
        twice its|their|the normal? size, lump .. <eye>, lump on|in my? .. <eye>, <eye> .. lump, stye, sty, chalazion,
        hordeolum, bags .. bigger, quincke, like .. punched, like .. boxer|boxing, <eye> .. half shut|closed|open,
        <eye> .. fat, fat <eye>, fat lid{s/}, <eye> .. bulge{s/d/}, <eye> heavy and thick, distended, swelt, swellings,
        swells up, blown up like, blew up like, blowing up like, <eye> .. blew|blown up, <eye> .. ballooned
    """,
    "swelling!": """
        <face> .. .. <swell>, lip{s/} .. <huge>, tongue .. <huge>, face .. <huge>, lip massive, cheeks .. up like,
        <face> <be>? <very>? <very>? <swell>, <face> <be> <be>? <very>? <very>? <swell>, swelling|swollen of|in|on|around my?|the? <face>, <swell> <face>,
        <swell> .. <face>, <face> .. <swell>, <face> .. blew|blown|blowing up, <face> .. like .. balloon, angioedema, angiooedema,
        <eye> .. bulging, bulging <eye>, <eye> .. sticking|popping|poking|bugging out, proptosis, bulging out,
        <face> .. doubled, <face> .. twice, whole face .. huge, face .. like football|pumpkin|moon|melon, fat lip{s/}
    """,
    "itching": """
        scratch scratch, my <eye> .. scratch, itchies, wanna .. scratch, wants? to be scratched, i scratch, scratch at, scratched at, rubbing at, rubbing them, cant stop rubbing, keep rubbing, keep scratching,
        itch, itchy, itching, itches, itched, itchin, itchiness, itchier, itchyness, pruritus, pruritic, scratchin,
        scratching, want to|wanna scratch, need|wanting to scratch, scratch my eyes out, wanna claw|rip, claw my eyes out,
        rubbing .. <eye>, rub my .. <eye>, tickly, tickling, <eye> .. tickle{s/}, ticklish, make{s/} itch
    """,
    "burning": """
        vinegar, like bleach, chlorine, like .. shampoo, like mint, minty, tiger balm, burny, hot sauce in, lemon juice, feels hot, like fire,
        burn, burns, burning, burnin, burned, burnt, burny, sting, stings, stinging, stingin, stung, stingy, smarting,
        smarts, on fire, prickly, prickling, nipping, nippy, scalding, like acid, like chilli|chili|pepper, feel{s/} hot,
        <eye> .. hot, hot <eye>, lid{s/} .. hot, spicy, soap in .. <eye>, like soap, like onion{s/}, chopping onions, sizzling
    """,
    "pain": """
        pain, pains, painful, hurt, hurts, hurting, hurtin, hurty, sore, soreness, ache, aches, aching, achy, ached, tender,
        tenderness, throb, throbs, throbbing, throbbed, owie, ouchie, owwie, stabbing, sharp pain, bruised, bruisey, pulling pain,
        discomfort, uncomfortable, killing me, eye{s/} .. killing me, raw, <eye> .. raw, painfull, sensitive to .. touch,
        pounding .. <eye>, <eye> .. pounding, pressure behind .. <eye>, pressure in .. <eye>, ouch, shooting pain, smarting pain,
        stab of, punch{ed/} in the eye
    """,
    "pain!": """
        it kills|killing .. .. move|moving|look, proper pain when i look, hurts .. move, cant sleep .. pain, cant stand .. pain, pain .. <cant>, so much pain, in so much pain, wicked pain, pain is awful|horrific|terrible|insane|extreme|something else, horrific pain, terrible pain, awful pain, extreme pain, blinding pain, screaming in, pain .. 10/10, sobbing .. pain, pain .. screaming|vomiting|unreal, cried .. pain, crying .. <sore>, <sore> so much i, pain .. doubled,
        <lot> .. <sore>, <sore> .. <lot>, <sore> .. unbearable, pain .. <lot>, <sore> .. <cant> .. take|stand|bear|cope|sleep|function|handle|open,
        <cant> take|stand|bear|cope|handle .. pain|anymore, cant bear it, cant take it, pain .. 10|ten|9|nine|8|eight out of 10|ten,
        pain|hurts .. 10/10|9/10|8/10|11/10|100/10, 10/10|9/10|8/10 .. pain, <sore> so bad .. cant|crying|screaming|cry|scream|shaking|sick|vomit,
        in agony, agonizing|agonising, excruciating, worst pain, screaming .. pain, in tears .. pain, crying .. pain, crying from .. pain,
        pain .. worse than childbirth|labor|labour, hurts to move .. <eye>, hurts when i|i'm|im move|moving .. <eye>,
        hurts moving .. <eye>, <sore> .. move|moving .. <eye>, <sore> .. look|looking up|down|sideways|side|around,
        move .. eye{s/} .. <sore>, pain on .. movement, pain with .. movement, hurts .. roll .. <eye>, pain .. through the roof,
        knife in .. <eye>, like .. knife, stabbed .. eye, pain i cant, worst ever pain, howling, doubled over .. pain, level 10
    """,
    "watering": """
        red and running, and running but, eyes .. running, theyre running, are streaming,
        crying all day, cry all day, cry nonstop, crying and im not|sad, wont quit crying, <eye> .. keep running, keep running, watered, eyes .. tearing, streaming down,
        watering, watery, waters, <eye> .. water, they water, water when|if|a|all|constantly|nonstop|so|like, make{s/} .. water, water is coming, water comes, water keeps, water running, water and, water from .. <eye>, and water, watered, waterin, teary, tearing, tearing up, teary eyed, tears, weepy, weeping, weep, weeps, streaming,
        stream, streams, leaking, leaky, leaks, lacrimation, epiphora, runny, running nonstop, <eye> .. run|running|runs, waterworks, waterfall,
        <eye> .. faucet{s/}|tap{s/}|drip{s/ping}, wont stop crying, keep{s/} crying, <eye> .. crying, crying nonstop, wet <eye>, <eye> .. wet, lacrimating,
        dripping, eye{s/} .. flood{ing/ed}
    """,
    "discharge": """
        mucopurulent, mucoid, d/c, sleep in .. eye{s/}, stuck|glued|gummed|sealed .. when i wake, stuck|glued|gummed .. every morning, stuck .. on waking, yellowy, eye gunk, eye goop, weepy gunk,
        discharge, discharging, crust, crusty, crusted, crusts, crustiness, crusties, gunk, gunky, goop, goopy, goo, gooey, pus, puss, pussy eye,
        purulent, mucus, mucous, mucousy, exudate, sticky <eye>, <eye> .. sticky, eye{s/}? bogeys|boogers|booger|bogies, sleepies, slimy, slime, ooze, oozing,
        oozes, oozy, weeping pus, yellow stuff|gunk|crust|bits, green stuff|gunk|crust, stringy, matter in .. <eye>, matted, eye{s/} .. matter, gooky, gook,
        snot, stuck together, glued together .. morning, stuck shut .. morning, eye snot, <eye> .. bunged up, bunged up .. <eye>, gloopy, gloop, manky, flaky crust
    """,
    "rash": """
        whiteheads, whitehead, papular, zits, zit, little dots, scabby, rough and dry, dry and flaky, peely, spot{s/} along, milia, pustule, thickened skin, red patches, red patch, blotchy, blotches, flecks, skin .. rough|scaly|dry,
        rash, rashy, rashes, bumps, bump, bumpy, pimple{s/}, pimply, blister{s/ed/ing/y}, spots on|around|under .. <eye>, spots, flaky, flaking, flakes, flake,
        flakey, peel, peeling, peels, peeled, scaly, scaling, scales, dry skin, dry patches, dry patch, dermatitis, eczema, papules, pustules, vesicles, welts on .. <eye>, skin .. cracked|cracking|rough|leathery, cracked skin, crackled, rough patches, breaking out, broken out, broke out, breakout,
        scabs, scabby, scab, lesion{s/}, excoriated, red dots, tiny dots, skin .. coming off, lids .. dry, dry <eye>lids, chapped
    """,
    "light": """
        light .. like .. knife|knives, light .. goes through, lights .. squint, light{s/} .. make .. squint, lights .. make .. water,
        <cant> tolerate .. penlight|light{s/}, sun .. disturb{s/ing}, light{s/} .. disturb{s/ing}, light{s/} .. annoy{s/ing}, sun .. annoy{s/ing}, hates .. light{s/}, hate .. bright light{s/}, light aversion, sun .. makes .. stream|water|run, sun .. <cant> open, light .. stab{s/bing}, light .. too strong, light .. agony|torture, dont like .. light, lights .. torture, look at .. window .. hurt{s/}, bright light{s/} .. bother{s/}, sun .. too bright, <cant> be in .. light,
        photophobia, photophobic, light sensitive, light sensitivity, sensitive .. light{s/}, sensitive .. sun{light/shine/}, sensitivity to .. light{s/},
        light{s/} .. bother{s/ing/ed}, bother{s/ed/ing} by .. light{s/}, light{s/} .. hurt{s/ing/in}, light{s/} .. kill{ing/s}, light{s/} .. pain{s/ful}, light{s/} .. unbearable, light{s/} .. sting{s/ing}, light{s/} .. burn{s/ing},
        hurts .. look at .. light{s/}|screen{s/}|phone|window, hurt{s/ing} .. in .. light{s/}, <cant> stand .. light{s/}, <cant> look at .. light{s/},
        <cant> handle|take|bear|tolerate .. light{s/}|sun, sun{light/shine/} .. hurt{s/ing}, sunlight .. bother{s/ing}|unbearable|painful|killing, sun .. bother{s/ing}|killing|burn{s/ing}, bright .. hurt{s/ing}|painful|bother{s/ing},
        lamp .. hurt{s/}, wearing sunglasses|shades inside|indoors, sunglasses|shades indoors|inside, in .. dark room, sit{ting/} in .. dark, hide|hiding from .. light,
        wince .. light, squint{ing/} .. light, screen{s/} .. hurt{s/ing}, daylight .. hurt{s/ing}|painful|unbearable|bother{s/ing}, light is too much, lights are too much,
        lights off, curtains drawn|closed|shut, sensitive to bright, glare .. hurt{s/ing}|bother{s/ing}, headlights .. hurt{s/}, windows hurts
    """,
    "gritty": """
        throwing sand, sand and .., like a? grain|grains, piedrita, rubbing sand, feel{s/} like gravel, grain of sand, like .. pebble, like theres dust, beach in,
        gritty, grit, grittiness, sandy, sand in .. <eye>, like sand, sand, sandpaper, grainy, scratchy, foreign body sensation, fb sensation,
        gravel, like .. dust, <eye> .. dry, dry <eye>, dryness, dust in .. <eye>, like .. eyelash in, like .. crumb{s/}, glass in .. <eye>
    """,
    "poking": """
        something sharp, sharp .. corner, sharp lash, sharp hair, small needle, needle, needles, like .. splinter, standing inside, is going inside .. <eye>, inside .. <eye> and touching, hair pricks, pointing at .. eyeball, lash .. pointing in, thorn, sticking me, sticking in .. corner, scrape{s/}, scraping, stick{s/ing} .. in my lid, wire, stabby, jaggy, prickles, catches .. when i blink, feel .. when i blink,
        poking, poke, pokes, poked, pokey, poky, poking me, prick, pricks, pricking, pricked, jab, jabs, jabbing, jabbed, jabby, digging in, digging into, digs, dig,
        pinch, pinching, pinches, stab me, stabs, something .. in .. <eye>, sth in .. <eye>, somethings in .. <eye>, stuck in .. <eye>, stuck to .. eyeball,
        something|somethings stuck, something .. under .. lid, foreign body, lash .. in .. <eye>, one .. in .. <eye>, pointing into .. <eye>, pointy, spiky, spikey,
        tugging, pulling on .. lid, pulling at .. lid, pulls, scratching .. eyeball, scratches my eye, rubbing against, something in it, stab .. when, going into .. eyeball,
        something there, touching .. eyeball, hair in .. <eye>, catching .. lid, piece of .. in my eye
    """,
    "poking!": "straight|right|deep into .. eyeball, sticking in there, lodged in .. <eye>, embedded in .. <eye>, stuck .. in .. eyeball, sticking out of .. eyeball, in my actual eyeball",
    "vision!": """
        cant|cannot|couldnt really|even|barely|hardly|properly see, sight .. .. dim|gone|dark|dimmed|black, double images, image .. double, lamp down, lights down in it, everything .. gone blurry, went dim, gone dim, gone dark, going dim, dimness, changes in .. vision, vision .. changed|changes, dark patch, see .. double|two|halos,
        <cant> see, <cant> see anything|properly|right|clearly|well|good|straight, lost .. vision|sight|eyesight, losing .. vision|sight|eyesight, loss of .. vision|sight,
        vision|sight|eyesight .. gone|going|went|goes|lost|failing|fading|dim|dimmed|darker|dark|weird|funny|off|bad|worse|cloudy|foggy|hazy|misty|fuzzy|wavy|double|patchy|gray|grey|black|strange|wonky|messed|tunnel,
        blind, blinded, blindness, going blind, gone blind, went blind, dim, dimmed, dimming, double vision, seeing double, see double, seeing two, see two, see 2, seeing 2, diplopia, doubled vision,
        flashes, flashing, flashing lights, flash of light, flashes of light, wavy, zigzag{s/}, zig zag{s/}, squiggly lines, wobbly lines, kaleidoscope, floaters, floater, black spots, dark spots,
        dark spot, black spot, blank spot, blind spot, shadow .. vision|over|across|corner, curtain .. over|across, like .. fog, like .. frosted glass, like .. tracing paper,
        like .. underwater, like .. through .. steam, halos, haloes, halo around, rainbows around, scotoma, went .. dark, going .. dark, everything .. double, everything .. dark, everything .. dim,
        everything .. gray|grey|black, went black, goes black, tunnel vision, cant make out, cant focus, wont focus, cant read .. text{s/}|screen|sign{s/}|print, lines .. wavy|bend, see .. wavy,
        seeing stars, seeing spots, see spots, visual disturbance, sparkles in, lightning .. corner|eye, milky
    """,
    "vision": """
        blurry, blurred, blur, blurs, blurring, blurriness, blury, fuzzy, foggy, hazy, cloudy, filmy, film over, film on, misty, smeary, everything .. fuzzy,
        vision .. off, <eye> .. cloudy, out of focus, unfocused, blurrier, smudgy, fogged, cant see clear
    """,
    "breathing!": """
        tingle .. tongue, lips .. tingl{y/ing}, cant take .. air, hard .. take .. air, air .. not, hard .. get .. air, throat .. like .. closing, clearing my throat, keep clearing my throat, throat .. tingl{y/ing},
        <glue> .. breathe, used my inhaler, inhaler .. times, inhaler .. not, voice .. weird|funny|gone|hoarse|croaky|strange, whistle .. chest, whistling .. chest, chest .. whistling|rattling|rattle, air .. not enough, not getting enough air, cant get enough air, throat .. closing|close,
        <cant> .. <breathe>, <cant> catch .. breath, <cant> swallow, <cant> get .. air|breath, wheeze, wheezing, wheezy, wheezes, short of breath, shortness of breath, sob, dyspnea, dyspnoea, dysphagia, stridor,
        <breathe> .. hard|difficult|trouble|funny|weird|heavy|shallow|labored|labored|tight|harder|rough|bad|difficulty, hard|harder|difficult|trouble|struggling|struggle|tough|difficulty|problem{s/}|issue{s/} to|with|in? my? <breathe>, hard .. to swallow, harder to swallow, trouble swallowing, difficulty swallowing, difficult to swallow,
        swallowing .. hard|difficult|hurts|weird|funny, hurts to swallow, struggling to swallow|get, struggle to swallow, gasping, gasp, gasping for, choking, breathless, out of breath, no breath, fighting for breath, labored breathing,
        chest .. tight|tightness|tightening|heavy|closing|squeezing|tighter, tight|tightness|tightening|squeezing|pressure .. chest, tight chest, tight throat, throat .. tight|tightness|closing|closed|close|tightening|closes|narrow|itchy|scratchy|swelling|swollen|lump|constricted|constricting|thick|funny|weird|shutting,
        tightness|tightening|lump|tight .. throat, tongue .. tingle{s/}|tingling|tingly|numb|itchy|thick|fuzzy|heavy|prickly, tingling|tingly|numb .. tongue|lips|lip|mouth, lips .. tingling|tingly|numb|tingle{s/},
        mouth .. tingling|tingly|numb|itchy, anaphylaxis, anaphylactic, anaphylactic shock, suffocating, airway, cant talk properly, job .. getting? .. breath, puffing and wheezing, my breath .. short, using .. inhaler, inhaler .. isnt|not|wont, whistling .. breathe,
        <breathe> in gasps, panting, get my breath, catch my breath, sounds? like a? whistle, voice .. hoarse, breathing like
    """,
    "in_eye": "in|into|inside my|the|both|one|her actual? <eye>, in my left|right <eye>, in .. eyeball, en el|los|mi|mis <eye>, in it",
    "glue_in_eye!": """
        <glue> .. went in, stuff .. .. dripped, stuff .. in .. <eye>, product .. in .. <eye>, drip .. in .. <eye>, <glue> .. my eye, felt it go in .. <eye>, liquid .. in .. <eye>, drop .. in .. <eye> .. smell, <eye> .. got .. <glue> in,
        <glue> .. in|into|inside my|the|me|both|her .. <eye>, <glue> .. on|onto my|the eyeball, <glue> .. in|into|inside <eye>, <glue> got|get|went|ran|dripped|leaked|seeped|splashed|dropped|fell|touched .. <eye>, <glue> .. got in|into|inside, <glue> .. went in|into,
        <glue> .. ran|dripped|leaked|seeped|splashed|squirted|flicked|trickled|slid|flew|dropped|fell|shot in|into|on|onto, splash{ed/} .. <glue> .. <eye>, drop|bit|blob|splash|drip|some of .. <glue> .. in|into .. <eye>, <eye> .. <glue> in it, <glue> in it,
        <eye> .. full of <glue>, got .. <glue> .. in .. <eye>|it, touched .. <eye> .. with .. <glue>, <glue> .. touched .. eyeball, <glue> stuck .. eyeball, chemical burn, chemical in, chemical splash
    """,
    "sealed_eye!": """
        <cant> .. open .. .. <eye>, tryna|trying .. open .. .. <eye> .. aint, trying to open .. not, top lashes .. stuck .. bottom, lashes .. stuck .. bottom, <eye> .. closed by .. glue, <eye> .. is closed, it does not open, does not open, do not open, will .. not .. open, shut and wont, wont come apart, lids .. fused, <eye> .. glued, glued closed, glued together, <eye> .. stuck, <cant> get my .. <eye> .. open, <cant> unstick, wont unstick, stuck closed, stuck together,
        <cant> .. open .. <eye>, <cant> open it|them|either|neither|my|the|one|left|right, cant get .. <eye> .. open, cant get it|them open, <eye> .. wont|cant|doesnt|isnt|not|refuses|refuse to? be? .. open|opening, <eye> .. wont open, wont open, isnt opening, not opening, doesnt open, dont open, will not open, would not open,
        wouldnt open, <eye> .. glued|stuck|sealed|fused|welded|bonded|gummed|cemented|superglued shut|closed|together|down, glued|stuck|sealed|fused|bonded|cemented|welded|gummed shut|closed, <eye> .. sealed, <eye> .. shut, lids .. stuck, lids .. glued, eyelids .. together, glued my .. <eye>,
        <eye> .. closed .. cant, <eye> .. unable .. open, unable to open, impossible to open, cant pry|peel .. open, cant separate .. lids|eyelids|lashes|<eye>, lids wont separate|part, <eye> .. wont part, top and bottom .. stuck|glued, upper .. lower .. stuck|glued together, pry .. eye .. open, cant lift my? .. lid,
        only open one eye, one eye .. wont open, open one eye only, shut tight, clamped shut, eye .. closed up
    """,
    "swollen_shut!": """
        swollen|swelled|puffed|swole|swoll|puffy|swelling .. shut|closed|close, so swollen .. cant|barely|wont .. open|see, <swell> so much .. cant|wont .. open, <swell> .. cant .. open, shut .. swelling
    """,
    "hives": "broke|broken|breaking|came out in hives|welts, hive, hives, urticaria, welts, welt, wheals, nettle rash, hivey",
    "hives!": """
        hives|welts|welt|urticaria|rash .. all|whole over|body, hives|welts|rash .. everywhere, covered in|with .. hives|welts|rash|bumps|spots, head to toe, hives .. arms|chest|belly|stomach|legs|back|torso|trunk|neck|tummy,
        rash|bumps|itchy .. whole|entire body, rash .. arms|chest|belly|stomach|legs|back|torso|trunk|body, itchy all over, itching all over, welts .. arms|chest|belly|stomach|legs|back|torso|neck, hives spreading, rash .. spreading down,
        bumps .. all over my? body|arms|chest, broke|broken|breaking out .. all over, body .. hives|welts
    """,
    "faint!": """
        fainting on, fell over dizzy, almost fell, legs .. gave, room .. going round, room went, head .. swimming, swimmy, unsteady, giddy, feeling faint, light in the head, all fuzzy in the head, seeing stars when i stand, floaty,
        faint, fainted, fainting, fainty, faints, passed out, passing out, pass out, passin out, blacked out, blacking out, black out, lightheaded, light headed, light head, lightheadedness, dizzy, dizziness, dizzier, woozy, syncope, syncopal, presyncope, presyncopal, near syncope, collapsed, collapse,
        collapsing, going to faint, feel faint, room .. spinning, head .. spinning, about to drop, keeling over, keeled over, swooning, lost consciousness, unconscious, knees .. buckled|buckling, gone clammy, cold sweat, nearly went down, legs .. jelly, gonna pass, wobbly
    """,
    "injury!": """
        <eye> .. bleeding|bleeds|bled, bled .. <eye>,
        impaled, scratched .. when .. tweezer{s/}, caught .. with .. tweezer{s/}|scissor{s/}, tweezed .. eye, poked .. eye .. blood,
        scratched .. cornea|eyeball|eye, corneal abrasion, abrasion, cut my .. <eye>, cut .. eyeball|eyelid, <eye> .. cut, <eye> .. pierced, pierced .. <eye>, stabbed .. <eye>, tweezer{s/} .. in|into .. <eye>, tweezer{s/} .. poked|jabbed|stabbed|scratched|hit|slipped, poked|jabbed|stabbed|scratched|nicked|gouged .. with .. tweezer{s/},
        punctured .. <eye>, <eye> .. punctured|torn|ripped|scratched|injured|gashed|sliced, injured .. <eye>, eye injury, scissor{s/} .. <eye>, <eye> .. bleeding, tore .. eyelid, ulcer .. <eye>, corneal ulcer, corneal, lash .. gone into .. eyeball
    """,
    "pupil!": """
        pupil .. .. bigger|larger|huge|blown|dilated|different|wider|smaller|size|other, pupils .. .. different|size|same|match,
        pupil .. bigger|larger|huge|blown|dilated|different|size|smaller|wide, pupils .. different|uneven|unequal|size{s/}|match|same|mismatched|bigger, one pupil, anisocoria, unequal pupils, blown pupil, mismatched pupils, uneven pupils, pupils dont match
    """,
    "irritated": """
        the light thing,
        iritis, uveitis, eyes .. not happy, playing up, <eye> .. acting up, acting up, bothersome, <eye> .. annoyed, giving me .. trouble, <eye> .. giving me, <eye> .. not right|good|great, hate .. my eyes, <eye> .. hate,
        irritated, irritation, irritating my .. <eye>, irritate, irritates, reaction, react, reacting, reacted, allergic, allergy, allergies, infection, infected, infect, conjunctivitis, blepharitis, keratitis, something wrong with .. <eye>, something .. wrong, something isnt right,
        <eye> .. angry, angry <eye>, flare, flared, flaring, flare up, sensitive <eye>, <eye> .. sensitive, not right with .. <eye>, <eye> .. bothering me, <eye> .. weird, <eye> .. funny, <eye> .. mess, <eye> .. bad, <eye> .. messed up, <eye> .. fried, <eye> .. cooked, <eye> .. aggravated, upset <eye>
    """,
    "fever": "103, 104, thermometer, 38, 40, shivers, hot and cold, burning up with, sweating, fever, feverish, temperature, temp of, running .. temp, chills, pyrexia, febrile, shivering, sweats, 38.{5/6/7/8/9}, 39, 101, 102, 103",
    "hot_lid": "lid{s/} .. hot|warm, eyelid{s/} .. hot|warm, eye{s/} .. hot|warm, hot lid{s/}|eyelid{s/}|eye{s/}",
    "headache": "headache, head ache, migraine, head .. pounding|splitting|killing|hurts|hurting|aching|banging|throbbing|exploding, headaches",
    "sickly": "nausea, nauseous, nauseated, throwing up, threw up, vomit, vomiting, vomited, puking, puked, feel sick, feeling sick, sick to my stomach, being sick, been sick, want to be sick, queasy, barfing",
    "hospital!": """
        epi pen, epipen, adrenaline pen, used .. epi, called 911, called 999, called ambulance, in an ambulance, ambulance is, heading to .. er|hospital|emergency, going to .. er|hospital, on my way to .. er|hospital|a&e|casualty, im in|at .. er|hospital|a&e|urgent, off to a & e, off to .. er|hospital
    """,
}
