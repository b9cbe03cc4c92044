"""What ails people elsewhere than at the eyes: it keeps them from a visit, and is no sign of a reaction.

How phrases are written: `aftercare.core.reading.phrases`; words are spelled as `tokens` folds them. Nothing that may be
a reaction is here: no rash without the part that has it, no throat, tongue, lips or face.
"""

from __future__ import annotations

ENGLISH = {
    "figure": """
        ear|chest|sinus|tooth|gum|kidney|bladder|urine|urinary|uti|toenail|nail|toe|lung|water|wisdom|stomach|belly|belly-button|piercing
        infection|infections|abscess, infected
        toe|toenail|nail|finger|tooth|gum|piercing|tattoo|knee|foot|tattoos|blister|cut, chicken|chickens pox,
        chickenpox, shingles on|down my|the? side|back|ribs|waist|belly|leg|hip, ringworm, tonsillitis, glandular
        fever, appendicitis, appendix out, got|have|has|had|with|passing kidney|gall stones, kidney stones
        in|again|at, gallstones, gallstone attack, gallbladder, food poisoning, stomach|tummy
        bug|flu|ache|upset|in|pain|pains|cramps, norovirus, winter vomiting, vomiting|throwing|puking bug,
        puking|vomiting|vomited all night|day|since, sick all night|over, projectile vomiting, dodgy
        curry|prawns|kebab|chicken|takeaway|oyster|oysters, piles, haemorrhoids, hemorrhoids, sciatica,
        slipped|bulging disc|disk, frozen shoulder, carpal tunnel|tunnel's|tunnels|tunnels' playing? up?, tennis
        elbow, athletes|athlete's foot, bunion, bunions, gout, hernia, pneumonia, bronchitis, laryngitis, chest
        x|xray|cold, tonsils out, burnt|burned|bit|bitten|scalded my tongue|mouth on|with|eating|drinking|again,
        lift|move|raise|feel my arm|arms|leg|legs, splinter in my|me|his|her thumb|finger|foot|hand|toe|heel|palm,
        pulled|pull|pulling|tore|torn|strained a|my hamstring|muscle|calf|groin|ligament|back|tendon in? my|the?
        neck|back|shoulder|leg|thigh|side|arm?,
        sprained|twisted|rolled|broke|broken|fractured|busted|done|dislocated|snapped|sprain|bust|cracked|bruised
        my|me|a|her|his|the|both?
        ankle|wrist|toe|leg|arm|foot|knee|hip|collarbone|rib|ribs|finger|elbow|shoulder|wrists|ankles|legs|arms,
        broken collarbone|rib|ribs|toe|finger|wrist|ankle|arm|leg|foot|hip|bones|bone, threw|put|did|done|chucked
        my|me back|neck|hip|shoulder|knee out|in, back|neck|knee|hip has|is|s? gone|out|went again|out?, emergency
        root canal, root canal on|at|today|tomorrow|booked|done, wisdom tooth|teeth, tooth
        abscess|extraction|out|pulled, toothache, dentist at|on|tomorrow|today, mouth ulcer|ulcers the? size? of?,
        ulcer in|on my mouth|tongue|gum, cold sore{s/}, streaming nose|cold, runny nose, full of cold|a|the,
        head|chest|stinking|rotten|heavy|streaming cold, stinking|rotten|awful|bad cold, hay fever .. in my nose,
        hayfever .. in my nose, nosebleed, nosebleeds, nose bleed|bleeds, nose .. bleeding, nose
        wont|keeps|started|been|is|was bleeding|stop|bleed, man flu, the flu, covid,
        sunburnt|sunburned|peeling|burnt shoulders|nose|back|legs|arms|chest|feet, sunburnt|sunburned|burnt|peeling
        shoulders .. nose, peeling nose|shoulders|back|feet|arms, blisters|blister on both|my|me|the|each
        heels|heel|feet|foot|toes|toe|hands|palms|thumb, blisters on .. heels|feet|toes|hands,
        eczema|psoriasis|dermatitis on|in|behind my|me|the? hands|hand|elbows|knees|knee|scalp|legs|arms|feet|elbow
        .. flaring|flare|flared|playing|itching|itchy?, period cramps|pain|pains, morning sickness, hungover,
        hangover, flu|covid|tetanus|travel jab|jabs|vaccine|shot, arms dead, sore arm, bit|bitten|stung by|on
        a|an|the|my? tick|jellyfish|dog|horsefly|hand|foot|leg|ankle|knee|arm|toe|cat|spider|crab, tick bite,
        leg|legs|foot|knee|ankle|arm|hand|thumb|toe|heel|back is|s|are? hot and sore|swollen,
        burned|burnt|scalded|cut|sliced my|me hand|hands|finger|fingers|thumb|arm|foot|leg
        on|with|in|cutting|chopping|open, in hospital till|til|until|with|for|having|visiting, at the hospital
        with|all|visiting|for, minor injuries, whiplash, in a cast|splint|boot|sling, on crutches, rear ended, a|the
        fall off|down|on|from the|a ladder|stairs|steps|horse|bike|bus, in one piece, smear test, blood test{s/},
        bowel|heart scope|scan, tyre|tire blew|burst|went|blown, nits, head lice, hand foot and mouth, foot and
        mouth, asthma clinic|review, panic attack on|in|at, nose surgery|job,
        cataract|cataracts|squint|bunion|retina|hip|knee|laser done|op|operation|operated|out|surgery|eye
    """
}
SPANISH = {
    "figure": """
        gripa, gripe, catarro, resfriado, resfriada, tos, amigdalitis, anginas, fiebre no, influenza, covid, dolor
        de muela|muelas|barriga|espalda|estomago|panza, me duele la muela|espalda|panza|barriga|rodilla, me duele el
        estomago|tobillo|pie|hombro, muela horrible|del, vomite toda|toda|anoche|y, vomitando toda|desde|y, cayo
        mal|pesimo|pesado la|el|algo, no salgo del bano, intoxicad{a/o} con|por el|la|los|las?
        camaron|camarones|ceviche|comida|mariscos|pollo, diarrea, chorro, colicos, dolor de
        rodilla|cintura|cadera|hombro|oido|muelas|huesos, me bajo muy|la|el? fuerte|regla|periodo, cruda, resaca,
        torci|torcio|luxe|fracture|rompi|quebre|quebro|lastime el|la|un|una
        tobillo|pie|pierna|brazo|mano|muneca|dedo|rodilla|cadera, uña|una del pie, infecto una?
        uña|una|diente|muela, fuego en|en la boca, fuegos en la boca, fuego labial, operan|operando|operaron de
        la|del cadera|rodilla|apendice|vesicula|hernia|corazon, esguince, ciatica, lumbalgia, yeso en, me cai de
        la|las|el escalera|escaleras|moto|bici|gradas, piedras en el rinon|vesicula, presion alta|baja, subio la
        presion, tuvo|tuve|tuvimos un choque|accidente, estoy|estamos en urgencias|emergencias|clinica con,
        ando|estoy en el hospital con|nacio|cuidando
    """
}
