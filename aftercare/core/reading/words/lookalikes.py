"""Words of English and Spanish that are a slip away from one of ours, and mean what they say: "spelling", "ditching".

Made by `tests/bench/lookalikes.py` from the word lists of pyspellchecker (MIT).
"""

from __future__ import annotations

from aftercare.core.reading.tokens import listed

LOOKALIKES = listed("""
    abba abby ablacion ablation abogada abogado abollada abollado abrasions abrasiva abrasive abrasivo abridor
    abrigar abril aburrir aced aceitosa aceituna aces acetate achingly acing acme acne acre acres acted actuado
    acuoso acusado adan adder adenoma adhesion adhesiva adidas adjetivo adores adrenal adrenalin adrian adriana
    afanoso afebrile afrenta agencia agha agonizingly agra agrado agredida agredido agregada agregado agresion
    agresivo aguada aguador aguar aguardo aguda agudo ague aguja ahogada ahogado ahumado aida aide aids airplay
    airways ajena ajustada ajustado alan albergo alcoholic alden alleges allegra allegro allergen allergist
    amapola amarillenta ambulances amena america americas ampolleta ampoule ampoules anadida anadido anafilaxis
    anda andan anden andy anemona anemone anfibia anfibio apaches apelado apena aposito apuntada apuntado
    apurado aqua arabian arano arbor arborea arboreo arca arcadia arcadian arcadio arce arcen arched archers
    arches arching arcilla arco ardent ardera ardid ardiente ardilla ardua arduo area arenas arenero arenga
    arenisca argolla aria arian arida arido ario arma armadas armador armenia armor armored armorer armories
    arne arpa arpia arre arriendo arriero arsenal arte artisan aryan ascot aseo asfixiante asfixiar ashe ashes
    ashy asidero asno aspa aspecto aspects aspera aspires asserts aturdida aturdido audiencia austero avecilla
    avena avispero ayes ayudado ayuntamiento azulada azulado baboons babying bache bada baffling bagger bagging
    baggy bailing baiting bala balling balloonist balloting ballots ballroom ballrooms bamba bana band bandera
    banding bandy banisters banking banning barba barbijo barda barging baring barking barn barns barreno
    barreta barrett barrica barrido barrier barriers barrigon barring barrio barrios barroca barroco barrote
    basa bash bashes basking bassoon basting bata bateria batted bawling baya baza beaks bearing bears beating
    beatles beca beck beefing beep beeper beepers beeping beeps belated belinda belt belts bender benders
    beneath berated berating berthing beta biddy bids biggest biggles billion billions bind binder binders
    birding bitch bitched bitches bitchier bitching bitchy bitters blake bland blanked blare blaring blasted
    blaster blasters bleached bleacher bleaches bleaching bleating blend blended blender blighters blinder
    blinders blindly blinker blinkered blinkers blips blister blithering blitzed blocked blogged blogger blond
    blonder blondes blooded bloodshed bloomed blotch blotted blotter blubbing blue bluer blues bluffed bluffing
    blunder blunted bluntness blurb blurt blurted blurting blurts blushed blushing bluster blustering blustery
    boarding boasted boba bocha boga bogged boggy bola bolder boleras bolstered bolstering bolsters bona boner
    bonheur bonkers boosted boosters booties booze boozing boozy bora bordada bordado bordear border borders
    borgona born borrada borrado borrasca borrego borrico borrows boscosa boscoso bota botado botches bote
    boulder bouncer bounded bounden bounder bourn bowie bowling boya braided brained brainy braised braking
    branded brash bravado braving braying brazada breach breached breaches breaching breadth breakouts breakup
    breasts breathed breather breathers breathlessly breaths breathy breeches bretana brete brick bricked
    bricking bricks brigada bringer brit britches broader broca brocade brocado broiled brokers bronzes brooches
    brota broth brothel brothels browsed bruise bruiser bruises brunt brushed brute brutes bucking budding buddy
    budging buen buff buffed buffing buffs buffy bugger buggers buggery bulbo bulking bullion bullring bulls
    bulo bumming bumpers bumping bums bunk bunking bunny buns bunt bunting burbling burbs burdened burdening
    burdens burg burgled burgling buried burly burner burners burnett burnings burnish burnout buro burp burped
    burping burps burr burrito burritos burrs burry bursted bursting burt bury burying busking buss bussing
    busters busting busto busying butting buzzing cabbing cabby cabezon cabra cabrita cabs caca cache cached
    caches cachete cacheton cackles cain caisson caja calendula calentar calentita callada callado callando
    calmada calmado calorie calvados calzada calzado cama camello cameron camison campa campina campista cana
    cannoli cannon cannons canting capa capita capital capitan capped carat caravan caray carca care careo carga
    cargado cari carl carla carp carpa carpeta carr carrazo cars cart carta cary casca cascar cascara casco
    caseina casement cashes caspian casquillo casta castrar cata cater catered catering caters catheter
    catheters cava cavada cavado cavador caza celada cello celts cemento cements centrado cera cercado cercano
    cerrarlo cerraron cerrojo certera cesion chaffed chafing chained chaired chalada chalado chale chalets
    chalked chalking chamois chanced chanted chapada chapado chappie chappies chapter charada charles charmed
    charred charted chatted chavala cheat checks cheeking cheeky cheeses cheetos chelsea chemically chemist
    chemists chess chester chests chesty chewing chiding chiles chilies chill chilla chillar chilled chiller
    chillies chillo chillon chilly chiming chinche chingonas chipped chipper chirped chisels chist chive chives
    chlorate chloride chocking cholera chomped chomping choosing chopped chopper chorra chorrada chorrear
    chowing christs christy chucking chuckled cienaga cieno cifrado ciguena cilia cinch cincha clapped clapper
    clara clare clashes clashing clasped clavar clave clavija clavito clemens clement clemente clements clerical
    clime clipped clips cloaking clocking cloning clorato clouded clouds cloying clue cluster coal coasted coba
    cobrado coca cocking coda cofa cohesion coja cojo coke coked cokes coking colapso colar cole colgada colgado
    collage collages collapses collared collaring collars collate collated collating colmada colmado colored
    coloreds colorido colorin coloring colt coma comedor comedown comento comical comilon comision comite
    comment comprada comprado compton conceal concha congeal conjunction conking constar contra contras contrast
    contrata contrite cook cooking cooling coop copa copla cora corbeta cordial core corea corking cornada
    cornball corneas corned cornelia cornell corners cornet corneta cornets cornisa cornmeal cornuda cornwall
    coronada coronado coronal coronel coroner coronet correa corrido corteza cosquilloso costa costar costars
    costear costera costero costosa costoso costura cota counted counties courted cowling cozy cracker crackhead
    crackle crackles cradled crafted cramped craneal cranked crapped crapper crashed crashes crawled created
    creeks crest crested crests crick crimean crinkled croaking crocked cropped crowing cruddy crudest crudity
    cruelly cruelties cruelty cruised crusade crusades crush crusher crushes crustal crusting cuajada cuajado
    cuddy cuff cuffed cuffing cuffs culls culto cura curated cursado curt curvada curvado cuss cuya dabbed
    dabbing dabs dainty dala dalia dammed damning damping dampness darkness dash dashes davy dears deary
    debonair deck declamacion decoder decorosa decoroso deeper deeps defecto defender degrade dele delia delores
    demoing demoler depender deplores deponer derrama derramada derramado derramar derramo derrote derrumbe
    desalmada desalmado desarmada desarmado desarme descalza descampado descansada descansado descarada
    descarado descarga descargada descargadas descaro descended desecho desgana desgano deshecho deslumbrante
    deslumbrar deslumbre desmadrado desparecer despecho despellejar destajo destapada destellar destello
    desvanecido dialing dibs diego dies dieting digger digress dimmer dimmest dimple dimpled dimples dims
    dinging dings dink dinky dinners dinning dint diploma dipping dippy dips dire dirtier disbanded discarding
    discharges dishing dismayed dispensed diss dissing distanced ditched ditches ditching ditzy dive dives
    doable doer dogged doggy dolar dole doled doles dolido doliente dollies dolo dolorous doma donor dooming
    doozy doper doppler dorian doubles doublet doubly doubted doubter dover dower doze dozer dozes dozing dozy
    dragar draping drifting drilling drippings drizzly droppings drummed drumming duel dueling duelo duels duena
    duff duffed duffy dulls dumbness dump dumping dumps dumpy dunk dupla dwell dwelled dwelling dwellings dwells
    dwelt dyed dyes earing eater eaters eatery eccema eche ecuacion educate eels efusion eked embajada emilia
    empacador empanar emparrado empenada empenado empina empinada empinado empinar empleada empleado empujada
    emulate emulsion enable encajar encaje encajonado encamada encandilado encandilar encara encarado encarar
    encargada encargado encarna encarnada encarnado encendida encerada encerado encerrada encerrado enchapado
    enchilada enchiladas encoder encoger enema engaged engorged enlarge enlarger enraged enrejado enrojecer
    ensalada ensanado ensancha ensayada ensayado enterada enterado enterrador enterrar entrada entrado entregada
    entregado envejecida envejecido envejecimiento epica ereccion erosion errado erudicion erudite eruption
    eruptions esbozar escala escalar escalofrio escamosa escamoso escapar escapes escarpa escasa escatima
    escobar escoces escocesa escoger escogida escolar escollera escolta esconder escoria escucha escudado
    escudera escuela escueto escurra esencia espana espantada especia espero espesor espia espiada espiga espin
    espinaca espinal espinazo espino espinosa espira espiral espirar espiritu espita esponja esposar espuela
    esquela esquema esquina estampa estoica estonia estonian etch etched etching eves ewes excruciatingly
    excusado exes exfoliated expiate explanada eyeballed eyeless fabril faced faces facet fade fagged fain
    fairing fairway fakes faking fame famines fanning farce fare fared faring fase fash fasting fate fatted
    faulted faulting fave fawning faye faze feared fearing fears feasting feck fender ferrite fertile feta
    fevered feverishly fevers fewer fiambre fight figs filly films finca finch finches fink fishing fision fitch
    fits fitting fiver fives fizzling fizzy flagged flagging flailed flailing flak flame flamed flames flaming
    flamingo flanked flanking flapping flares flashed flasher flashier flashiest flatbed flatter flatters
    flaunted flaunting flaunts flavored flavoring flawed flay flayed flaying fleck flecked fleeing fleming flesh
    fleshed flexing flicking flicks flinging flint flints flinty flips flirted flirting flitted flitting float
    floated floating floats flocking flocks flogged flojo floored flooring florins flossing flowing flue
    fluffing fluke flukes flunkey flunking flurry flushes fluster flutters foaming foca fogey fogonazo foisted
    foisting foja folio fonder foraged fore forever forged forints forking fosters fotocopia frailty framing
    frasco fraying freaking fringed fringing froggy fronted fronting frote fucking funebre funk funky fussing
    fuzz gabbed gabbing gabby gadding gagging gainful gainfully gains gait gala galan galling gama ganging gano
    gaping garanon garante garantia garda gargantuan gasa gash gashes gassing gatling gauging gavel gawking gawp
    gawping gaznate gearing gears gema gender geranio germano gigs gitana gits gives glared glaring glee gloom
    gloomy glop glues glum glut goody goof goofy gooks goon gore gosling gracing grading grado graduate grafico
    grafito grained grajo gramo grana granada granary grandote grands granel granero granite granizo grannie
    granola grant granted grants graso grasosa grasoso grasp grasping grassing gratify grating grato gratuito
    grave gravelly gravely graven graver graves gravest gravitas graviton gravitons gravity graying grazing
    graznido grenade grid grift grim grin gringos grip gripping gris grist grita grito grits groping grotty
    grovel grunido guano guff gulls gulping gunny guns gusting haba hache hailing hala halls halogen halon
    halting halts halves handy hanky harden harlots hart hash hater haters hauling haves hawking haza haze
    headcase heals hears heartache heartaches heating heck heel heeled heels helada helado henchman herding
    herring hides hight hike hikes hills hincar hinchar hines hippy hire hires hitch hitched hitches hitching
    hits hoarded hobbling hogged hogging hoja holing honcho honchos honored hooey hoofed hoofing hook hooked
    hooky hoop hooting hopping horn horsing hosting hotline hotting hounded housing hove huffed huffing huffs
    huffy hugging hulking hulls hump humping humps hunched hunches hunk hunt hunting hunts hurdling hurl hurling
    hurls hurrying hurtles hurtling hurto husking hustling huts imitacion imitado imitate imitated imitates
    imitation impacted impaired impale impales impaneled imparted impeded impelled implied imply imposed
    inaccion inaction inca incan inception inch inched inches inching incitacion indebted indented indicted
    induccion inducted induction infamia infarction infecciosa infeccioso infecta infectar infecting infections
    infecto infects inferred infest infesta infested infests inflacion inflamar inflame inflames inflaming
    inflate inflated inflates inflation inflection inflections inflict inflicted infliction inflow informacion
    informed infraccion infraction infrared ingested ingestion inhaled inject injections injector injects inky
    insect insecto insects insercion inserted insertion inspeccion inspect inspected inspection insupportable
    intencion intention invencion invented invention inverted invested invitacion invitada invitado invitation
    inyeccion irrigacion irrigar irrigate irrigated irrigation irritable irritant irritante irritar ives jabber
    jabbering jaca jadeante jaggery jags jailing jalar jalea jalon jams japan japs jars jaula java jaws jays
    jazzing jeep jeepers jeeps jena jets jigger jigs jive jives jobs jogged jokes jokey jook jota jump jumps
    jumpy junk junky kara keel keels keeper keepers keeping keyed kiddy kink kinky kipping kits knot koala kook
    kooky kurt labia labs lace lacio lads lagarta laguna lain lake lakes lala land landline lanky laotian laps
    lara larder lasagna lasana lascar lasciva lastimadura lastimar lastimosa lastimoso latinos lava lavada
    lavado lazy leach leading leads leafing leafs leafy leaning leanings leans leaping leaps learning leary
    leasing leavings leccion leeks leering lega legado legenda legends legging legion legions legua lejana
    lejania lender lending lenguado lenguaje lengueta lensing leprosa leproso lesbian lesbians lesionar lessens
    lesson lessons letania lever levying lexicon libio licking licor lido liebre lies lighthearted lime limpido
    limps lind lingua lingual linking lint lippy liquida liquidar liquidate liquidez liquidity liquids lire lisp
    lives lizzy llegada llegara llorica lloriquear lloriqueo lloron llorona loading loafing loaning loca locking
    locos logged lola loma loncha loop loopy lore lotions luff lugging lulls lumps lumpy macana macaroon mace
    machetes magenta magna mains malaria malsana malted mamaria manchar manchon mandada mandado mandy manejada
    manejado mangado mangy manly mantras manzana mara maracas marana marcador marchar marchita marchitar marco
    mare marejada margarita margo mariana mariano maricon marinas mario marion markers markets marlon marmots
    marooned maroons marrana marrano marron martens marvels marzo mascar mash massage massaged massages matanza
    mated mater material materials materna maternal materno matte mattered matthew matured mayoria mega mejilla
    mejillon mellado melt melts menaces mengua mensajera mensajero mesdames mesilla meta mica micky migraines
    migrant migrants migrate migrating mili milicia militar militia milk milks milla mindy mineria mink mints
    miranda mire miriada miseria mision missy mist mists mitch mocks mocosa mocoso modesta modestia mojo moler
    molested molester molesters molesting molestosa molests molida moneria monty moos mostro moth mottled
    mouthed mouths mouthy mucks muddy muff muffed mugging mumps muss musty mutated nabbed nabbing nabs napping
    nappy nara nascar nash nauseate nauseates nauseoso navy nearing nears nebulosa necks neediest needled negado
    neta nettles nick nicking niego nigger nips nits nock nola noodles nook nooky nostras nubian nublar nuked
    nuking nula nulo oink ojala okie oler olio olor olorosa oloroso omit ondulada oohing oozed opalo opiaceo
    order osada osado ostra ovillo oxigenado oxigenar paca pace paco padding paddles paga pagador pagana pail
    pails painted painting paints pair pairing pairs paisana pala palada paladar paladio palates palling palmada
    palmado palming pampers paneled paneling panicked panning panocha pans pantano panties papado papaito
    papeleo papilla papular paquete parades parado paradox parasito parda pareado parenting pareo paroles
    parrafo parrilla parting partings partying pasante pash pasmado pasting pasture pastures patenting patin
    patrana patrick patted patting paupers pausado pausing pautado pawn pawning pawns peaking peaks peaky peal
    pealing pears peca pecado pecador pecan pecar peck peckers peckish pedaled pedaling pedante peddled peddling
    pedrada peed peeing peek peeked peeking peeks peeler peelers peelings peen peep peeped peeping peeps peered
    peering peers pees peeved pegadizo pegan pegar pegaso pegasus pegging pegs peinada peinado peking pelador
    peldano pele peleador pelican pellizcar pellizco pelmazo pelt pelting pelts peluda peludo pena penado
    penance penchant pender pending penlight penning pensada pensado peopled peoples pepa peppers peppery
    pequena pera perches perching perecer perfido perfilado perforador perforadora perforar perforate perforce
    perform performs pericles perilla periodo periquete perjuro perorata peroxido perrero perrillo persiana
    peruana pesa pesada pesado pescado pestanear pestaneo pesters petardo petered petrels petting piar picada
    picado picador picana picara picard picaro picarona picasso pick picked picker pickers picking pickings
    pickled pickles pickling picks picky picota picoteado picotear piecing pigmento pigs pika pike piker pikes
    pila pilar pillada pills pilotear piloted pina pinar pincer pincers pinchar pinche pinched pinchers pine
    piney pinked pinkies pinking pinko pinks pinning pino pins pint pintada pioneer pipa pips piquant piqueta
    pira piranha piranhas pirueta pisa pisar piscina pisotear pisoteo piss pista pita pitada pitar pitched
    pitches pitching pitchy pits pitting pizca plain plains plancha planning planting plegado plonker plowing
    plucked plucking plunked plush poca pockets pointer points poker pokers pole poles polio polls poly ponchos
    poncing ponder pone pony pooches pooed pooing poop pope popes poppers popular poquita porches pore pored
    pores poring porky portilla posada posado pose posed poses posing posture postures posy pote potrilla pots
    potting pouch pouches pouring pouting prancing prating preening prefers prelado premier prenada prenado
    prestada preying pricing pricker prickle pricy primary prime primed primero primers primes priming primor
    princely princes printer probing proceed produce produced producer produces producir production productivo
    productor productora products prognosis proposes protean protesis provide proving proyecto prudent prusico
    psiquica psyches psyching pubs pudding puffin puffins pugs puja pujante puke pukes pulgada puling pulleys
    pulsing puma pump pumping pumps punalada puncher punches punching pundits punk puns punta puntada punteada
    punting punzante punzar punzon pupa pupilar pupilo pups pura purgante purifier puritana purples purulenta
    pustula puta puts quebrada quebrado quebrar quedada quedar quejar quejido quemador quera querida querido
    quicken quicker quickie quijada quimica quimono quince quinine quiosco raccoon race rada radio radishes
    rains rainy raja rameses rampa rampant rand randy ranting rasa rascacielos rascador rascal rascals rasgada
    rasgado rasgar rasgo rashly rashness raso rasp raspada raspado raspador raspar rasping raspon raspy rastreo
    rastro rasurar rateria rath ratted ravel rawness reaccionar reached reacher reaching reactant reactiva
    reactive reactivo reactor reacts reader readers readied readiness readying realness rearing rearmed rears
    rebecca recanted recanting recasting recited reciting recoded recogedor recoger recover recovers recovery
    redaccion redact redacted redaction reddest rededor redeemed redeeming redeems redneck rednecks redress
    reduccion reducer reduction reel reeled reeling reels reenact reenacted reenacting refaccion refraccion
    refract refracted refracting refraction refuted refuting regress reja rejecting rejection rejects relacion
    related relating relation relived remixed remocion remodel remojar remotes removers removes rena render
    rendered rendering renders renovador renovar reojo reopened reopening reorder repacking reparar repentina
    repentino reponer reposado repress reputed resaca rescued rescuing reseccion resect resected resection
    resenar resented resenting resents resfriar resisted resistir resistor resistors resists resolver respaldo
    respect respecto respects respetar respirador respirator responso restado resting retenida retirar retorcido
    retraccion retract retracted retracting retraction rever revere revestida revestido revived revoked revolved
    revolvedor revolver reyes rezoned rica rick ricks rids riego rigger rigs rija rijo rimmed rimming rincon
    rink ripping rips risco risita rive roasted roasting robada robado roca rociada rociado roda rodada rodado
    rodo rogado rogo rolliza rollizo roma romo rona ronca ronny rook ropa rosario rosca rosco rosetta rosters
    rostrum rota rotates rote roto roza rozo rublo rubro rudder rudders rudeness rudy ruff rumor rumored rump
    rumps runty rushes russ rust rusted rusts rusty saab sabio saco saggy sailing saint sainted saints sala
    sales salient saliente sallow salsera sameness sana sandpiper sands sane sang sank sans sapling sara sash
    sashes savings sayings scabbing scabies scads scag scald scalded scale scaled scallop scalped scalpel
    scalpels scalper scalpers scalping scalps scamming scams scan scanning scans scape scar scares scarily
    scaring scarring scars scarves scary scat scathing scatting scenting scolding scooping scooting scoping
    score scoreless scoring scorning scot scots scrap scraper scrapings scrapper scrapping scrappy scraps
    scratcher scrawling screams screeching screechy screwing scribes scrimping scripting scripts scrubby
    scrunchy scruple scruples sealing searing sears seating seats secesion secession seclusion secretion
    secretions sedating seedlings seep seeping seeps sellada selling sells senalado sender sensitiva sensitively
    sensitivo sensitized sentado sere seriedad serrado servers servidor sesion seta setting settings sever
    severa severed severest severing severs shabby shading shafting shakers shallot shallows shaming shandy
    shaping sharking shavers shaving shearing sheaths sheeting shell shelled shelley shelling shells shelved
    shelving shifters shilling shillings shills shimmering shimmers shimmy shining shinning shippers shiver
    shivered shore shorn shots shoveling shovels showering showers shriveling shrivels sibling sickly siega
    sifting sighs sighted sights signing silente silky silvers simple simply sincere sind sing singeing singing
    singling sings sinker sinking sinning sintoma sipping sips sire siting sits skating skilled skinning
    skirting skye slab slabs slake slanging slashes slashing slavering slavers sleepiness sleepless sleeves
    sleight slice sliders slights slim slimmer sling slinging slings slinking slips slivers sloop slung slur
    slurred slurring slurry slurs slush smacking smart smarten smarter smartest smarties smartly smarty smear
    smeared smearing smears smelled smelling smells smelt smelted smelting smirking smiting smudge smudged
    smudges snarling snatching snipers snipping snippy snit sniveling snob snog snooping snoot snore snort
    snorting snots snout snubbing soaping sobre socrates sofocante sofocar softness soggy soja sola soldado sole
    solera solida soltera solucion solutions solvency solventar solvents solving soma sone soot soplado sora
    sorceress sores soro south spacing spain sparking sparring spats spaying spearing spelled speller spelling
    spellings spells spelt spic spice spick spics spike spiked spikes spilled spilling spiny spits spoke spokes
    sponging spoofing spooling spooning spore sporting sports spouts spraying spreads springing springs springy
    sprouts squidgy stabbings stables stacking staffing staging stags staining stalking stalled stalling
    stamping standby stans staples stapling starling starring startling starts starving stating stats staving
    stealing steaming steams steeples stemming sterling stewing stiffing stifling stilled stilling stinger
    stingers stingray stink stinks stinky stint stints stirling stirring stoning stooping store storing stowing
    strafing strapping straying streak streaking streaks streaky streamed streamer streamers streamline streets
    stressing stretching stretchy strider strides striker string stringed stringer stringing strings striper
    stripes stripey striping strongly strumming strung stubbing stubs stun stunk stuns stunt stunting styling
    sublime suburban sucesion suckles suckling suela suffocation suing summary sump sung sunk sunny superar
    superflua superfluo superman supresion supurante surtidor suss sutura suya swab swabbing swabs swallowed
    swallower swallows swanning swarming swats swatting swaying swearing sweated sweaters sweaty sweep sweeping
    sweepings sweeps sweet sweeties sweeting sweets swellest swelter swept swerved swerving swigging swill
    swilling swimmer swing swinging swings swirled swirling swiveling swivels swooping swooshing swore swot
    swotting swung syringe taba tabbed tabby tabs tackling tagging taint tainted tainting taints tala talan tara
    tarda tardia tardio tars tasca tater taters tatted taxiing teaming teams teas teats teething temperate
    temperatures temping tempting tended tendera tendered tenderest tenderly tendero tenders tending tenedor
    tener tenner tensing tent tenting termita terrina terrine terry testing teta textile thawing thermometers
    thickly thor thorns thorny thoron threat threats throats throaty throes thrombus thrones thronged thronging
    throngs throws thunder ticketing ticking tickler tighten tightly tights tilling tilt tilting timonear
    timonel tina tinder tine ting tinge tings tinhorn tinker tinkling tino tins tinta tinted tintero tints
    tipping tirania tirante tiroidea tiroles tirolesa tirotear tiroteo titch tits tizzy toca tojo toked toking
    toma tonel tongued tongues tonight tonsure toronja totting toughing touring touting trabar trading tragada
    tramar trampa transar trapear trashes trashy tratar trazar trena tricked tricking trickles trickling tricks
    tripping tromba tromp trompada trompazo trompe tromped trompeta trompo tronera tropa trote trudging trusted
    trusts trusty tsarina tsars tuff tune tuned tuner tunes tunnels turns tuya twinkling twinkly ulcerosa ulcers
    unbearably unbeatable unbreakable uncomfortably unconsciously unexcused unreadable unready unstable unusable
    urinaria urns usable useable vaciado vain valido vanidosa vanidoso vara vasca vasco vasta veep vega vehicle
    vehicles vein velada velado vender venerar ventosa ventoso verdugo verdura veta vibrato vicar vidriero
    vidriosa vincha vineyard visa visions visita visitar visited visiting visitor vison vistas vistazo visto
    vistosa vita voicing voiding vomitada vomitado vomitiva vomitivo vomitona vomits vouch waders wafer wafers
    wager wagered wagering wagers wailers waiter waiters wakened walkers wallow wallowing walt walter walters
    wandered wandering wanders wankers warden warder ware warmers wary washes wasp waster wasters watcher
    watchers waterbed waterfalls waterman watermarks watershed waterside waterway wave waver wavered wavering
    wavers waxy wears weary weathered weathering weathers weavers wedging weed weeding weeds weedy weeing ween
    weeny weld welds welled welling wells wending wept wert west wets whalers wheal wheeler wheelers wheelie
    wheelies wheeling wheels whereby whitened whizzes whizzing wight wigs wile wilt wilts wimple winch wink
    wintered wintering winters wintery wired wiry wise witch witches witching witchy wite withered withering
    withers wits wittering wive wives wobble wobbled wobbles wooded woody wooly wreath writ writers wrote wuss
    yarda yellowed yellows yids yipping yips yoke yoked yokes yonder yore youth yowling yurt zara zeta zigs
    zipping zippy zips ziti
""")
