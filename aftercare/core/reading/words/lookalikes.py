"""Words of English and Spanish that are a slip away from one of ours, and mean what they say: "spelling", "ditching".

Made by `tests/bench/lookalikes.py` from the word lists of pyspellchecker (MIT).
"""

from __future__ import annotations

from aftercare.core.reading.tokens import listed

LOOKALIKES = listed("""
    abriendo abriendose pasteles pastel pastelito pastelitos wheely wheelie wheelies pisando pisar pisan pisado guevos huevos
    ardently argentina capillaries chicho chisporroteo colilla crichton desdicha deshecha desinflar encadenada
    encadenado encarnar encarnizada encarnizado encorvada escarpada escarpado escurrido flama flamear flamenca
    gargantilla guindilla inyectar machacada machacado maullido picotazo pisoteo pizarra rasgadura raspadura rastrera
    saturacion separacion superacion
    raras abrieron abriendo diciendo dicen granote granotes enganchada enganchado enganchadas mirame miradas raspon raspones
    arrieron digas pesadas merienda medida medidas mediana mejora
    pasteles pastel pastelito pastelitos wheely wheelie wheelies pisando pisar pisan pisado guevos huevos
    empapada empapadas empapado empapados quitando quitandome quitandote quitandose quitandomelas enchinador
    cyclone cyclones pillando pillado pillados camilla camillas
    quedaban quedaba quedan quedaron quedado quedada quedados quedadas respondo intentado intentada mananas fait sont cest soll quem keeley
    abba abby ablacion ablation ablution abollada abollado abra abrasions abrasiva abrasive abrasivo abril
    absolution aced aceitosa aceituna acertado aces achilles achingly acing aclarada aclarado acme acne
    acorazada acorazado acre acres acted acuoso adan adder adhesion adhesiva adidas adjetivo adores adrenalin
    adrian afebrile afeccion afectada afectado affected affection agonica agonizar agonizingly agra agrado
    agredida agredido agregada agregado agresion agresivo aguada aguador aguardo agudo ahogado aida aide aids
    ajena ajustada ajustado alan alarming alchemical alcoholic alden allergen allergist allowing altering
    amarillenta amarrada amarrado ambulances amena americas ampolleta ampoules amura anafilaxis anda andan anden
    andy apartado apelado apena apuntada apuntado arano arbor arca arcadian arce arcen arched arches arching
    arco arcon ardent ardera ardid ardiente ardua arduo area arenas arenga arenisca argon aria arian arida arido
    ario arma armor armories arne aron arpa arpia arpon arre arriendo arte aryan ascot aseo aserrado asfixiante
    asfixiar ashe ashy asno aspa aturdida aturdido audiencia aula aupa aural auras aurea avecilla avena aventura
    avispero ayes ayuntamiento babbling bache backed bacteria bada baffling bagger bagging baggy bailing bala
    baled baling balling balloonist balloting ballroom ballrooms bamba bana bandy banisters banning bantering
    barba barda barging baring barking barn barns barrido barriers barrigon barring barrio barrios bartered
    bartering basa baseline bash bashes bata bateria batted battered battering battles baya baza beaks bearable
    bearing bearings bears beca beck beep beeper beepers beeping beeps belts benching berating berthing beta
    beveling bickering biddy bids biggles billions bind binder bitched bitches bitchier bitching bitchy blabbing
    blacken blackened blacker blackest blackouts blake blanched bland blanked blanking blare blaring blasters
    bleached bleacher bleaches bleaching bleating bledo bleed bleeders bleeping bleeps blend blended blending
    blends blessing blighters blinder blinders blinkered blinkers blips blithering blond blonder blooding bloods
    bloodshed bloom blotted blubbing bluer blues bluffing bluntness blurb blurt blurted blurting blurts blushing
    blustering blustery boarding boba bobbing bocha boga bogged boggling boggy bolder bolstered bolstering
    bolsters bona bonachon boner boosters boosting booze boozing boozy bora border bordered born borrasca bota
    botado botches botching bote bottling bouncing bounder bounding bourn bowie bowling boya bragging brainy
    braise braised brash brawling breach breached breaches breaching breadth breakouts breasted breathed
    breather breathers breathlessly breathy bred breeches breeding breeds breezing brete bricked bricking bricks
    brimming brit britches broca brocado broiling bronchitis brooches brood brooding brota broth brothels
    bruiser bruises brunt brushing brute brutes buddy buen buff buffed buffing buffs buffy bugles bulbo bullring
    bulls bulo bumbling bums bunching bundling bung bungling bunk bunking bunny bunt bunting burbling burbs
    burdened burdening burg burgling buried burly burnable burner burnings buro burp burped burping burps burr
    burrito burritos burrs burry bursting burt bury burying buss busto busty cabbing cabby cabra cabs caca cache
    cached caches cachete cacheton cackling cadencia cain caja calendula calentar calentita callando calvados
    campa campanada campista cana cannon canting capa capita capitana capped capsules carat caray carca cardigan
    carencia careo carga cargante cari carinosa carinoso carl carla carp carpa carr carrying cars carson cart
    carta cary casca cascar casco casement cashes casquillo casta castings cata catered catering caters catheter
    catheters cattle cava cavada cavado caza celada cello celts cemento cements centrado cera cercado cerrarlo
    cerraron cesion chaining chale chalking chanting chappies charting cheat cheating checks cheeking cheeping
    cheering cheesing chemically chemists chess chesty chill chilla chillo chilly chinche chingonas chipped
    chipping chist chive chives chlorate chloride chocking chomping choosing chopped chorra chorrada chorrear
    chowing chucking chuckled chuffing chugging churning cieno cilia cinch cincha clacking clanking clapped
    clara clare clashes clashing clasping classing clavar clave cleaving clement clemente clements clerical
    clerking clicker clicking clime clinches clinching clinging clipping clips cloaking clocking cloistered
    cloisters clung clustered clustering clusters clutches coaccion coaching coal coasting coba cobbling coca
    coda codeina cofa cohesion cohesive coja cojo coke coked cokes coking colapso colar cole collages collapses
    collared collaring collated collating coloreds colorido coloring colt colusion coma comedown comision comite
    comprada comprado concha confeccion confection conjunction conscious consulado contra contras contrast
    contrata contrite cook cooking coop cooped copa copla cora core corea cornball corneas corned cornelia
    cornell cornet corneta cornmeal cornwall coronada coronado correa correosa correoso cosquilloso costa costar
    costars costera costoso costura cota counties courtier courting cowling cozy crabbing crackhead crackle
    crackles craftier crafting craggy cramping crapped crapping crashers crashes crashing cratered crawling
    creacion creaking creaming creating creation cred creed creeks creencia creepers creeping crest crested
    cresting crests cribbing crick crier cries crimping cringing crinkled crinkles crinkling cristina croaking
    crocodiles crooning cropping crotches crude crudo cruelties cruise cruised cruising crumpling crusader
    crusades crusading crush crux cuddy cuff cuffed cuffing cuffs culls culto cunning cura curating curd
    currying curt cuss cuya dabbed dabbling dabs dainty dala dalia dammed dampness darkness dash dashes dateline
    daunting davy dawdling deadened dears deary deathless debonair declamacion decorosa decoroso deeper deeps
    defected defection defender dejected dele delia delores demented demoledor depender deplores depresion
    derrama derramada derramado derramar derrumbe desalmada desalmado desarmada desarmado descalza descampado
    descansada descansado descarada descarado descarga descargada descargadas descended desecho deshecho
    deslumbrante deslumbrar deslumbre desmadrado desparecer despecho despellejar destacar destapada destapar
    destellar destello desterrada desterrado desvanecido dibs dickering diego dies digger dilution dimple
    dimples dims dina dings dink dinky dint dipped dipping dippy dips dique dire disbanded discarding discharges
    dismayed dispensed diss distanced ditched ditches ditching ditzy dive dives division dizzying doable doer
    dogged doggy dolar dole doled doles dolido doliente dolo dolorous doma donor doodling doozy doper dorian
    dormitar doubles doublet doubly dover dower doze dozer dozes dozing dozy dragar dragging draining dreaming
    dribble dribbles drifting drilling drippings driveling drizzled drizzling droppings drowning drugging
    drumming drying duchy duckling ducklings duel duelling duelo duels duena duff duffed duffy dulceria dulls
    dumbness dump dumping dumps dumpy dung dunk dunning dupla dusky dusts duty dwarfing dwell dwelled dwelling
    dwellings dwells dwelt dyed dyes earing eaters eatery eccema eche ecuacion edna eels effected eked elastica
    elegante embajada emigrant emilia empacador emparrado empenada empenado empina empinada empinado empleada
    empleado empollar empujada emulsion enable enacting encajar encaje encajonado encamada encandilado
    encandilar encara encarado encargada encargado encarnada encarnado encendida encerada encerado encerrada
    encerrado enchapado enchilada enchiladas encrusted enema energica energico engaging enganosa enganoso
    engorged enlarge enlarger enrejado enrojecer ensalada ensanado ensancha ensayada ensayado entender enterada
    enterado entering enterrador enterrar entitles entregada entregado envejecida envejecido envejecimiento
    envision epica ereccion erecting erection errado erudicion erupting eruption eruptions escala escalada
    escalado escalera escalofrio escamosa escamoso escapada escaping escasa escatima escoces escocesa escoger
    escogida escollera esconder escoria escudado escudera espana espantada espero espia espiga espin espinaca
    espinal espinazo espino espinosa espira espirar espiritu espita estimada estimado estonian estribor etch
    etched etching etchings eves evolution ewes exacting excruciatingly excusado exfoliated explanada extender
    eyeballed fabril facet fagged fain fairway fakes faking faltered faltering fame farce fare fared faring fase
    fash fate fathered fathering fatted faulting fave faye faze feared fearing fears feasting fender fermented
    feta fetching feverishly fevers fewer filching filly films fina finca finch finches fink firmness fision
    fitch fits fiver fives fizzling flagging flailing flak flamed flaming flamingo flanking flapping flares
    flashed flasher flashier flashiest flatters flaunted flaunting flavored flavoring flawed flay flayed flaying
    fled fleecing fleeting fleshy flickered flicking flicks flinging flint flints flinty flips flitting float
    floated floats flocking flocks flogged flojo flood flooring flossing flue fluffing fluke flukes flung
    flunking flurries flurry flushes flustered flutters fobbing foca fogey fogonazo foisting foja folio fomented
    fonder fore forged fotocopia fraccion fraguado frasco freaking freckled freckles frenillo fringing frisking
    froggy fronting frosting frote fruiting frying fuelling fumbling funk funky fura fuzz gabbed gabbing gabby
    gainful gainfully gaining gains gait gala galan gallardo galleons gama gano gaping garantia garda gardenia
    gargantuan gasa gash gashes gasoline gassing gathered gavel gawp gawping geared gearing gears gelded gema
    gender giggles giggly gigs gina gitana gits glared glaring gleaming gleaning glee glimmering glinting
    glistened glistening glistens glitches glittered glittering glitters glittery gloating gloom gloomy glop
    gloriosa glorioso glossing glues glum glut gnashing goad gobbing gobbling goggling goody goof goofed goofy
    gooks goon goosed gore grabbing grado graduate grafito grajo gramo grana grandote grands granel granite
    granizo grant granting grants graso grasp grasping grassing grato gratuito gravely graven graver graves
    gravitas graviton gravitons graznido grid grift grim grin grip gripping gris grist grita grito grits
    grooming grooving groped grossing grotty grovel growling grunge grungy grunting guano guardian guerrilla
    guff gulls gunning gunny guns gusty guzzling haba hache haggling hala halls halon halts halves hammered
    hammering hammers hamper hamsters handcuff handy hanky harden hart hash hastings hatching haters haunting
    haves haza headcase heals hearings hears heartache heartaches heck heckling heedless heel heeled helada
    helado henchman hepatitis hides hight hikes hincar hinchar hines hipped hippy hire hires hitch hitched
    hitches hitching hobbling hogged hoisting hoja holing hollered homophobia homophobic honcho hooey hoofed
    hook hooked hooky hoop horn hosting hove hovering huffed huffing huffs huffy hulls humbling hummer hump
    humps hung hunk hunt hunting hunts hurdling hurl hurling hurls hurrying hurtling hurto hustling huts
    imitacion imitated imitates imitation impacted impale impales impaneled imparted imparting impelled imply
    inaccion inaction inca incan inception inch inched inches inching incitacion indebted indented indicted
    induccion inducted induction infarction infecciosa infeccioso infecta infectar infecting infections infecto
    infects inferred infest infested inflacion inflamar inflame inflames inflaming inflated inflates inflation
    inflection inflections inflicted infliction inflow informacion informed infraccion infraction infrared
    ingested ingestion inject injections injector inky insect insensitive insercion inserted insertion insolvent
    insolvente inspeccion inspected inspection inspirar insupportable intencion intention internada internado
    invencion invented invention inverted invested invitacion invitada invitado invitation inyeccion ionizing
    irrigacion irrigate irrigated irrigation irritable irritant irritante irritar irrupcion isolation ives
    jabber jabbering jaca jadeante jags jalea jalon jammer jams japan japs jars jaula java jaws jays jeep
    jeepers jeeps jena jets jewelled jigger jiggle jiggles jiggling jiggly jigs jingling jive jives jobs jogged
    jokey jook jota jousting jubilada jubilado jubilosa juggling jump jumps jung junk junky jura kara keels
    keeper keepers kettles keyed kiddy kindness kink kinky kipping kitchens kits knaves kneeled knifed koala
    kook kooky kurt labia labs lace lacio lacked lagging laguna lain lake lakes lala lamented landline lang
    lanky laps lara larder lasana lascar lashings lastimadura lastimar lastimosa lastimoso latching lathered
    lathering laura laureado lavada lavado layering lazy leach leaching leading leads leafing leafs leafy
    leaning leanings leans leaping leaps learning leary leasing leavings leeds leeks lega legado legion legions
    legua lejana lejisimos lender lenguado lenguaje lengueta lesbians lesionar lesson lessons leveling lever
    lewdness libio licker licor lido liebre lies ligamento lighthearted limiting limps lina lind lingua lipped
    lippy liquen liquida liquidar liquidate liquidez liquidity liquids lire lisp listened listening listings
    littered littering lives lizzy llegara lloriquear lloriqueo lloron llorona load lobbing lobbying locos
    logged lola loma loncha longs loop looped loopy lore luff lugging lugs lulls lunching lunge lunges lustroso
    lusty lynching macana macaroon mace machetes maddened maddening magna mains malted manchada manchado manchar
    mandy manejada manejado manfully mangy manly mara marana marcador marching marchita marchitar marco mare
    marejada margarita margo mario marion marlon marooned maroons marron marzo mascar mash massaged massages
    mastered mastering matching mated material materials materna maternal matte mattered mattering maturing
    maura mega mejilla mejillon melded mellado melts mengua mensajera mensajero mesdames meta mica micky migrant
    migrants migrating mili milks milla mina mindy mingling mink mints mire mision missy mists mita mitch
    mobbing mocks mocosa mocoso modestia mojo moler molested molester molesters molesting molestosa molida
    molienda monty moos moquear moqueta moquillo morphing mosquita mosquitoes mosquitos mostro moth mourning
    mouths mouthy mucks muda muddy muff muffed muffling mugging muggings mula multa mumbling mumps munching musa
    muss musty mutt mutua nabbed nabbing nabs napping nappy nara nascar nash nattering nauseate nauseates
    nauseoso navy neared nearing nears nebulosa necks neediest needled negado neta nibbling nick nickering niego
    nigger nipped nips nits nock nola nook nooky nosotras nostras nubian nublar nuked nuking nula nulo nuzzling
    objected oink ojala okie oler olio olorosa oloroso omit omitting ondulada oohing opalo operante order orson
    osada osado ostra overdose overdoses ovillo oxigenado oxigenar paca pace paco paga pagana pail pails painted
    painting paintings paints pair pairing pairings pairs pala palada pampering paneling panicked panning pans
    papado papering papular paquete parado parasito parching parda pareado parenting pareo parrilla parson
    parting partings partying pash passages pasting pastures patching patenting patin patted pattering patting
    pawn pawning pawns peaking peaks peaky peal pealing pears peca pecado pecan pecar peck pedaling pedante
    peddling pedestre peed peeing peeked peeking peeks peeler peelers peelings peen peep peeped peeping peeps
    peered peering peers pees peeved pegadizo pegan pegar pegaso pegs peina peking pelador pele peleador
    pellizcar pellizco pelt pelts peluda peludo penado penchant pender penlight pensions pepa pepperoni pera
    perching perfilado perforador perforadora perforar perforate perforce perform performs pericles perilla
    periquete perorata peroxido perrillo persiana pesa pescuezo pestanear pestaneo peyote piar picada picana
    picara picard picaro picarona picker pickering pickings pickles pickling picky picota picoteado picotear
    pigmento pigs pika pike piker pikes pila pilar pilotear pina pinar pincer pinchar pinche pinchers piney
    pining pinked pinkies pinko pinks pino pint pipa pipped pips piqued piques piqueta pira piranhas pisa pisar
    pisotear pista pitada pitar pitched pitchers pitches pitching pitchy pits pizca plain plains planking
    planning planting plastered plastering plasters plastica plateria pleading pleasing pled plegado plotters
    plucking plugging plush poaching pokers pole poles polio polls pollution polucion polvorosa poly ponchada
    ponder pondered pone pony pooed pooing poop pooped pope popes popular pored pores poring porky portilla
    posada posado pose posed poses posing positing postings postures posy pote potrilla pots pouch powdered
    praising prancing prattle prattles prattling preached preaches preaching preboste preening prelado prepping
    presentada presentado presilla prestada pricing pricker prickle pricy pried prime primed primero primers
    primes primor primping princely printing produced producer produces producir production productivo productor
    productora products prognosis projects prolapse promotes promover proofing proposes propping protesis
    prowling proyecto prudencia prying psiquica psyching pubs puffin puffins pugil pugs puja pukes puling puma
    pump pumps punalada punches punching punk puns punta puntada punteada punting punzante punzar punzon pupa
    pupal pupilar pupilo pups pureness purgante purifier puritana purulenta pustula puts puzzling quebrada
    quebrado quedada quedar quejar quelling quemador quera quibbling quimica quince quivering race rada radio
    radishes raffling ragging rainfall raining rains rainy rambling rampa ranching randy ranting rantings rasa
    rascacielos rascador rascal rascals rasgar rasgo rashly rashness raso rasp raspado raspador raspar rasping
    raspon rateria rath ratted ratting rattled rattler rattlers ravel rawlings reaccionar reached reaching
    reactant reactiva reactive reactivo reacts reader readiness readying realness reared rearing rears recanted
    recanting recasting reciting recogedor recover recovers recovery recreacion redaccion redact redacted
    redaction redeemed redeeming rednecks redouble redress reduccion reel reeled reeling reels reenacted
    reenacting refaccion refocused refraccion refracted refracting refraction refuting reganona reglamento
    regresion reja rejected rejecting rejection relacion relating relation relented remaking removers removes
    rena rencilla render rendered rendering renovador reojo reopened reopening repacking repented repentina
    repentino reposado represion resaca rescuing reseccion resect resected resection resented resenting resfriar
    resisted resistir resistor resistors resolution resolver respaldo respecto respects respetar respirador
    respirator responso retaking retching retenida retorcido retraccion retracted retracting retraction reveling
    rever revere revestida revestido revision revolved revolvedor revolver reyes rica rick ricks rids riego
    rigger rigs rija rijo rimming rina rincon ringling rink ripping rippling rips risco risita rive roasting
    robada robado robbing roca roda rodada rodado rodo rogado rogo roma romo rona ronny rook roosting ropa rosca
    rosco rosquilla rota rote roto rousting roza rozo rublo rubro rudder rudeness rudy ruff ruffling rumbling
    rumblings rumor rump rumps rung rungs runty rushes russ rust rusted rusting rustling rusts rusty ruta
    rutinaria saab sabio saco saddened saddening saggy saint sainted saints sala sales saliente sallow sameness
    sampling sandpiper sandra sands sangrar sangria santeria sara sash sashes sawbones scads scag scald scaled
    scalpels scalpers scalping scalps scamming scams scan scanning scans scape scar scares scarfing scaring
    scarring scars scary scat scathing scatting scenting scheming scolding scooping scooting scoreless scorning
    scot scotches scots scowling scram scraper scrapings scrapped scrapper scrapping scraps scratcher scrawling
    screamer screams screeching screechy screening screwing scribbled scribbling scrimping scripting scrunchy
    scruples scuffing sealing seared sears seating seats secesion secession seclusion secretion secretions
    sedating seedless seedling seedlings seep seeping seeps segmented segmento sellada selling sells senalado
    sender sensitiva sensitively sensitivo sensitized sere seriedad serrado servidor sesion sessions seta
    settings settlers settles sever severa severed severest severing severs shacking shackled shackling shading
    shafting shagging shallows shaming shandy shaping sharing sharking shavers shaving shavings sheared shearing
    sheeting shell shelled shelling shells shelving shifters shilling shillings shills shimmers shimmy shimmying
    shinning shippers shipping shirking shithead shitheads shiver shivered shocking shore shorn shorting shots
    shouldered shouting shoveling showering shredder shriveling shrivels shucking shunning shunting shushing
    sickly sickness siega sighs sights silky silvered simmering simpering simple simplest sinfully sing singeing
    singing singling sings sinker sipped sipping sire siting skimming skinning skipping skirting skye slab slabs
    slacked slacking slagging slake slanging slanting slashers slashes slashing slavering sled sledding sleepers
    sleepiness slicker slickers slim slimming sling slinging slings slinking slipping slips slivers sloop
    sloshing slouches slugging slung slur slurping slurred slurry slurs slush smacking smart smartest smarties
    smarty smearing smelting smirking smuggles snacking snagging snaking snapping snarling snatching sneaking
    sneezing snickering snipping snippy snit snitched snitches snitching sniveling snob snog snogging snooping
    snoot snoozing snore snort snorting snots snout snubbing snuffing snuggles snuggling soaking sobering sobre
    socrates sofocante sofocar softness soggy soja soldiered sole solera solida solteron solucion solutions
    solvency solventar solvents soma sone soot soportable sora sorceress soro south spain spanking spanning
    sparking sparring spats spawning speared speeders speeding spelled spelling spellings spells spelt spic
    spice spick spics spiffing spiked spilling spiny spits splashes splashing splotches spokes sponging spoofing
    spooking spooling spooning spore sporting sports spouts spraying springing springy sprinkles sprinkling
    spurning spurring spurting squiggle stabbings stacking staffing stags staining stairway staking stalking
    stalling stammering stamping stans stapling starling starring startling starts starving stashing stats
    stealing steaming steams steeling steeples steering stemming sterling stiffing stifling stilling stingers
    stingray stink stinks stinky stint stints stirling stirring stitching stooping strafing strapping straying
    streak streaking streamed streamer streamers streamline stressing stretching stretchy strider stringed
    stringer stringing striping stripping strongly strumming strung stubbing stubs stuffing stun stunk stuns
    stunt stunting subbing subconscious suburban sucesion suckling suela suffocation suing summering sump
    sundered sung sunk sunning sunny superflua superfluo superman supresion supurante sura surtidor suspirar
    suss sutura suya swab swabbing swabs swallowed swallower swallows swanning swarming swats swatting swearing
    sweaters sweaty sweep sweepers sweeping sweepings sweeps sweeties sweeting sweets swellest swept swerving
    swigging swill swilling swingers swinging swings swirling switches switching swiveling swooping swooshing
    swore swot swotting swung synching taba tabbed tabby tabs tackling tagging taint tainted tainting taints
    tala talan tallado tallador tara tarda tardia tardio tars tasca tastings taters tatted tattered tattle
    tattling taunting teaching teamed teaming teams teamster teas teats teething temperate temperatures
    tempering tempting tended tendera tendered tenderest tenderly tendero tenders tenner tensions tent tenting
    terquedad terry testicles testing teta thad thanking thermometers thickly thingies thingy thor thorny thoron
    thrashes threat throaty throes thrombus thronged thronging throws thrusting ticketing ticking tights tilt
    timonear tina tinder tine ting tinglado tings tiniebla tinker tinkling tino tins tinta tinted tints tique
    tiredness tiroidea tirolesa tirotear titch tits tizzy toady toca todd toed tojo toked toking toma tonel
    tongued tongues touchy toughing toweling trabar traccion tracking traction trad tramar trampa tramposa
    tramposo transito trapping trashes trashing trashy traspaso tratar trawling trazar treading treaties
    treating trena tricked tricking trickles trickling tricks trimming tripling trolling tromba tromp trompada
    trompazo trompe trompeta trompo trooping tropa trote trucking trudging trussing trusted trustees trusting
    trusts trusty tsars tuff tumbling tune tuned tuner tunes turbulent turnings turns tuya twangy tweaking
    tweeting twine twinkies twinkles twinkling twisters twitched twitches twitching ulcerosa ulcers unbearably
    unbeatable unbreakable unburned uncomfortably unconsciously undimmed unexcused uninfected unreadable
    unsettles unstable unusable unzipped unzipping upwelling urgencia urinaria urns usable uttering vain valido
    vanidosa vanidoso vara vasca vasco vasta veep vega vehicles velada velado vender versions veta vicar
    vidriero vidriosa vigilancia vina vincha vineyard virulent visa visita visiting vison vistas visto vita
    volition vomitada vomitado vomitiva vomitivo vomitona vomits vosotras vouch waders wafers wagered wagering
    wagers wagging waggling waiters walloping wallow wallowing walt walters wandered wandering warden warder
    ware wary washes wasters watchers watching waterbed waterfalls waterman watermarks watershed waterside
    waterway wattle wattles wave wavered wavering wavers waxy weakling wears weary weathered weathering weathers
    wedded weeded weeding weeds weedy weeing ween weeny weld welder welds welled wells wept wert west wets
    whacking wheal wheeled wheelers wheelies wheeling wheels whimpering whinging whipping whitened whizzing
    wielded wiggle wiggles wiggling wight wigs wile wilt wilts wimple winch wink wintered wintering wired wiry
    wise witch witches witching witchy wite withered withering wits wittering wive wives wobble wobbling
    wondered wooded woody wooly wort wracking wrapping wreaking wreath wreathed wrecking wresting wriggles
    wriggling wringing wrinkles wrinkling writ wrote wuss yachting yammer yarda yearling yearning yellowed
    yellows yids yipping yips yoke yoked yokes yonder yore youth yowling yurt zapped zara zeta zigs zipper
    zippered zipping zippy zips ziti
    ahorcada aldermen aligera andadera arcade arcades arcadia armada armadas atracada barley bleakness bloating
    boasting boating bonking braking bucked buckets burh pixar cadillac canalla candlelit capilla carmelita cartilla
    casilla castilla colorear corredera countering curtsy desplomar eremita garante groans guiada hank headings
    heaping heating honkies huddling inflamable inflar lioness llevadera mirages moro morreo morris morrow
    panadera parecida patina pecadora pechera pecora peldano peppered perplejo pescadera picadero pictorico
    pinata pixel pixelate poetica posadera preciada puppetry receso retches retiring retouched retouching
    retuning riddling riesling ripening rivaling salmo salomon saloon scotty sewing skewing skimmers slewing
    snooty spending stewing sunburst swaggering sweltering swimmers tasty throne throttle toasts visas warbling
    warded warding waring warmed warming warred warring whales winced winder wined winged
""")
