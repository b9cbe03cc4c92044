"""Ten more languages: enough to know them by, and the words at which nobody may wait for the morning.

A reply in one of them is always handed to a person; what is read here is her first guess of what it says. The short
lists are from common phrase books (from memory, no source).
"""

from __future__ import annotations

# Words by which a language is told, folded as `tokens` folds them.
COMMON = {
    "pt": """
        nao voce voces obrigada obrigado muito muita meu minha meus minhas olho olhos esta estao estou amei adorei
        cilios ficou ficaram lindo lindos linda tambem ontem hoje mas uma um com em na nos tudo bem bom boa coceira
        cocando uns isso ainda pouco sim quero oi to ta eu so pra pro dos das do da os as esquerdo direito doi
        doendo ardendo vermelho inchado desde que agora ja sem mais consigo posso agendar marcar horario remarcar
        mensagem deve ser nada ne moca gente fez fiz falta ar tava tavam vez outra por favor cola caiu caindo ver
        vendo gostei
    """,
    "fr": """
        je suis mes mon les des est sont avec pas tres merci bonjour bonsoir salut oeil yeux paupiere paupieres cils
        cest jai une le la et mais tout bien depuis hier aujourdhui vous ca un du au aux rendez oui non coucou
        nickel de ne ni plus mal ils elle elles sur pour dans me ma que qui quoi ce sa gauche droit droite peux peut
        faire fait ai on en beaucoup peu trop aucun aucune super contente adore parfait se lumiere
    """,
    "de": """
        ich bin ist sind mein meine meinem meinen das der die und nicht auge augen lid lider wimpern danke hallo
        sehr aber alles gut seit gestern heute habe hab kein keine mit auch wie bitte noch ein eine zu es ja nein
        kann super schon mir mich im am auf vom von fur was ganz nur fast weg rechte linke rechtes linkes rechten
        linken tut weh juckt brennt rot geschwollen leicht morgens nichts gar wieder sich den dem ihr sie
    """,
    "it": """
        sono riesco respirare sto mi sento mio mia miei mie gli occhi occhio ciglia palpebra palpebre grazie ciao
        molto ma tutto bene non ieri oggi che il una un ho le bellissime perfetto benissimo della anche piu con si
        per posso ci lo la e da di del dei delle nella nel nellocchio locchio destro sinistro destra sinistra brucia
        prude gonfia gonfio rossi rosso stamattina cosa devo fare rispondete subito favore colla entrata scusa scusi
        va po come quando
    """,
    "vi": """
        toi khong mat mi em chi rat cam on bi do ngua sung dau va cua minh hom qua nay dep duoc la nhe a nha oi co
        mot cho voi tu ben trai phai nhung dinh keo mo lich sang thu gio gui
    """,
    "pl": """
        nie jest sa mam moje moj oko oczy oczu rzesy dziekuje dzieki bardzo ale wszystko dobrze od wczoraj dzis i
        mnie troche super sie na powieka powieki swedzi czy moge prosze w z do mi lewe prawe dzien dobry juz jak co
        tylko moja jestem za
    """,
    "tl": """
        ako ko ang mga mata po salamat hindi na sa ng naman lang sobrang ganda pula makati namamaga wala ba yung
        masakit pero maraming ate kasi tsaka buong mukha labi kanang kaliwang din rin pa kayo nyo kagabi ngayon
        kahapon pwede may si ni
    """,
    "nl": """
        ik ben mijn het een niet oog ogen wimpers dank bedankt heel maar alles goed sinds gisteren vandaag geen ook
        zijn mooi erg met van dat en je dankjewel de is wel nog er voor kan
    """,
    "ht": "mwen mesi anpil je yo pa gen ap bon tre ou te nan trè e ki li",
    "tr": """
        cok tesekkurler tesekkur ederim gozum gozlerim yok var ve degil bugun dun guzel ama icin bir kirpik
        kirpiklerim evet hayir kadar gozumde benim
    """,
    "ro": "sunt nu este ochii ochiul multumesc foarte gene genele dar azi ieri bine si ma imi am cu la mai",
    "cy": "fy yn ac ers dwi wedi llygad llygaid ddim iawn diolch mae chwith ddoe heddiw bore neithiwr rwyf mewn",
    "hi": """
        nahi hai hain koi mast yaar bahut aankh aankhon khujli sujan dard meri mera theek sab bilkul na kya mein ho gaya
    """,
    "id": """
        saya mata tidak terima kasih sangat gatal merah bengkak dan tapi sudah bagus banget aku bulu ini itu yang
        kak kiri kanan
    """,
}
# Letters that these have and Spanish has not.
LETTERS = {
    "pt": "ãõâêôçà",
    "fr": "èàùâêîôûëïœç",
    "de": "äöß",
    "it": "èàòùì",
    "vi": "ăâđêôơưạảấầẩẫậắằẳẵặẹẻẽếềểễệịỉĩọỏốồổỗộớờởỡợụủũứừửữựỳỵỷỹ",
    "pl": "ąćęłńśźż",
    "tr": "çğışö",
    "ro": "ăâîșțşţ",
    "ht": "èòà",
}

# What a folded text in each script may hold; a word of a script without spaces is sought anywhere in the text.
SCRIPTS = {
    "ru": "\u0400-\u04ff",
    "ar": "\u0600-\u06ff\u0750-\u077f",
    "he": "\u0590-\u05ff",
    "hi": "\u0900-\u097f",
    "th": "\u0e00-\u0e7f",
    "ko": "\u1100-\u11ff\u3130-\u318f\uac00-\ud7af",
    "ja": "\u3040-\u30ff",
    "zh": "\u4e00-\u9fff",
    "el": "\u0370-\u03ff",
    "hy": "\u0530-\u058f",
    "ka": "\u10a0-\u10ff",
    "am": "\u1200-\u137f",
    "bn": "\u0980-\u09ff",
    "pa": "\u0a00-\u0a7f",
    "ta": "\u0b80-\u0bff",
}

# Signs in any of them: pieces of the folded text, as regular expressions. "!" means emergency.
SIGNS = {
    "poking": r"""
        kluje | kluja | kluj\b | cos mi wpad | wpadlo mi | prikt | pica no olho | sticht im auge
    """,
    "breathing!": r"""
        methu anadlu | saans nahi | sans nahi aa |
        garganta .* fechando | garganta fechou | chiude la gola | gola .* chiude | gola chiusa | hals schwillt |
        hals schnurt | hals geht zu | hals .* zugeschwollen | geen adem | geen lucht | niet ademen | keel zit dicht |
        makahinga | hirap huminga | hirap akong huminga | peine a respirer | respirar | peux pas avaler | atem\b | nicht schlucken | schlucken | deglutire | inghiottire | 不能吞 |
        吞咽 | 飲み込 | 삼키 | بلع | глотать | nao consigo respirar | falta de ar | nao respiro |
        nao consigo engolir | garganta fechando | peux pas respirer | peux plus respirer |
        arrive pas a respirer | arrive plus a respirer | mal a respirer | du mal a avaler | gorge serre |
        gorge se ferme | etouffe | keine luft | nicht atmen | schwer atmen | atemnot | kaum luft |
        schlecht luft | luft bekomm | kann kaum atmen | non riesco a respirare | non respiro |
        manca il respiro | gola chiu | gola che si chiude | kho tho | khong tho | nghet tho |
        nie moge oddychac | trudno oddychac | duszno | dusze sie | hirap huminga | hindi makahinga |
        di makahinga | nahihirapan huminga | nahihirapan po akong huminga | nahihirapan akong huminga | nahihirapang huminga | hirap po akong huminga | hirap po huminga | kinakapos ng hininga | niet ademen | geen lucht | benauwd | nefes alam | nu pot respira |
        sesak napas | sulit bernapas | pa ka respire | не могу дышать | трудно дышать | тяжело дышать |
        задыхаюсь | задыха | горло сжима | горло отек | не могу глотать | удуш | 下不了气 | 呼吸困难 |
        喘不过气 | 不能呼吸 | 呼吸不 | 喘不上 | 喉咙紧 | 喉咙肿 | 无法呼吸 | 呼吸困難 | 息ができ | 息が苦し |
        息苦し | 呼吸が苦 | 숨을 못 | 숨이 안 | 숨쉬기 힘 | 숨이 막 | 숨을 쉴 수 | 호흡곤란 | 숨 쉬기 |
        لا استطيع التنفس | مش قادره اتنفس | مش قادرة اتنفس | صعوبه في التنفس | صعوبة في التنفس | ضيق تنفس |
        ضيق في التنفس | ضيق نفس | اختنق | לא יכולה לנשום | קשה לי לנשום | קוצר נשימה | קשיי נשימה | सांस नहीं |
        सास नही | सास लेने | หายใจไม่ออก | หายใจลำบาก | δεν μπορω να αναπνευσω
    """,
    "vision!": r"""
        methu gweld | dikhai nahi | nazar nahi aa |
        не видит | ничего не виж | почти не виж | перестал видеть | consigo enxergar direito | consigo ver direito | enxergo mal | enxergando mal | enxergando embac | enxergando dobrad | vedo poco | vedo male | vedo a macchie | vois mal\b | vois trouble | sehe schlecht | seh schlecht | kaum sehen | kaum etwas sehen | zie bijna niets | zie slecht | zie wazig | widze slabo | slabo widze | goremiyor | 看东西模糊 |
        vois double | vois en double | auge nichts | auge nix | nichts mehr seh | vendo tudo dobrado | dobrado | presque plus | ne vois plus | ne vois pas | seh alles doppelt | doppelt |
        makakita | biglang dumilim | dumilim | темно | потемнело | 突然暗 | 変に見 | nao consigo ver |
        nao enxergo | nao vejo | visao dupla | visao embacada | visao turva | vejo dobrado | vendo dobrado |
        embacad | vois plus | vois pas | vois double | vision floue | vois flou | vue trouble | vue floue |
        aveugle | sehe nichts | nicht sehen | sehe doppelt | verschwommen | sehe kaum | seh nichts |
        doppelt seh | non vedo | vedo doppio | vista appannata | vedo sfocato | vedo annebbiato | non ci vedo |
        khong nhin thay | khong thay gi | mo mat | nhin mo | mat mo | nie widze | podwojnie widze |
        widze podwojnie | zamazan | rozmazan | hindi makakita | walang makita | di makakita | malabo ang |
        malabo | wazig | zie niks | zie niets | zie dubbel | goremiyorum | bulanik | nu vad |
        tidak bisa melihat | buram | не вижу | двоится | плохо вижу | туман | расплыва | 看不见 | 看不清 |
        看不到 | 失明 | 模糊 | 重影 | 見えない | 見えま | ぼやけ | 二重に見 | 안 보여 | 안보여 | 보이지 않 |
        흐릿 | 뿌옇 | 두 개로 | لا ارى | لا أرى | ما اشوف | مش شايفه | مش شايفة | رؤيه ضبابيه | ضبابي | زغلله |
        زغللة | لا استطيع الرؤيه | لا استطيع الرؤية | לא רואה | טשטוש | רואה כפול | מטושטש | दिखाई नहीं |
        दिख नही | धुधला | มองไม่เห็น | ตามัว | มองไม่ชัด
    """,
    "sealed_eye!": r"""
        methu agor | aankh nahi khul |
        khong mo | khong .{0,6}mo duoc | nao esta abrindo | nao ta abrindo | kleben zusammen | klebt zusammen |
        zusammengeklebt | incollat | dinh keo khong | nao consigo abrir | nao abre | olho colado |
        olhos colados | peux pas ouvrir | peux plus ouvrir | arrive pas a ouvrir | arrive plus a ouvrir |
        s'ouvre pas | oeil colle | yeux colles | oeil ferme | geht nicht auf | nicht offnen |
        nicht mehr offnen | nicht aufmachen | zugeklebt | auge zu | zugeschwollen | bekomme .* nicht auf |
        krieg .* nicht auf | non riesco ad aprire | non si apre | occhio incollato | occhi incollati |
        khong mo duoc | khong mo mat | khong the mo | mat dinh | nie moge otworzyc | sklejon | nie otwiera |
        hindi maibuka | hindi ko mabuksan | hindi mabuksan | di mabuksan | di ko mabuksan | ayaw bumukas | ayaw na bumukas | ayaw na po bumukas | ayaw po bumukas | ayaw nang bumukas | hindi na bumukas | di na bumukas | hindi po bumubukas | di ko maidilat | hindi ko maidilat | hindi maidilat | dumikit .* talukap | dumikit .* taas at baba |
        krijg .* niet open | niet open | acilmiyor | acamiyorum | nu pot deschide | tidak bisa buka |
        tidak bisa dibuka | не открывается | не могу открыть | склеил | слипся | слиплись | 睁不开 | 张不开 |
        打不开 | 粘住 | 黏住 | 睜不開 | 開かない | 開けられ | 開けない | くっついて | 안 떠져 | 안떠져 | 못 뜨 |
        눈을 뜰 수 | 떠지지 | 붙어 | ما اقدر افتح | مش قادره افتح | مش قادرة افتح | لا استطيع فتح | عيني ملصوق |
        מודבק | לא נפתח | לא מצליחה לפתוח | לא יכולה לפתוח | आंख नहीं खुल | नही खुल | ลืมตาไม่ขึ้น | ลืมตาไม่ได้
    """,
    "swelling!": r"""
        labios parecem | labios enormes | labios .{0,12}(?:salsich|gigante|imensos) | rosto .{0,12}(?:balao|bola|enorme) | cara .{0,10}(?:de balao|uma bola|enorme) | hele gezicht | gezicht is dik | gezicht .{0,8}opgezwollen | dikke lippen | lippen zijn dik | visage .{0,12}(?:ballon|enorme|double) | levres .{0,12}(?:enorme|double|saucisse) | gesicht .{0,16}(?:ballon|dick|aufgequollen|zugeschwollen) | lippen .{0,12}(?:dick|riesig) | faccia .{0,12}(?:pallone|enorme) | labbra .{0,12}(?:enorm|canott) | лицо .{0,12}(?:шар|раздул|распух) | губы .{0,12}(?:раздул|распух|огромн) | ang laki na? ng (?:labi|mukha) |
        rosto inchado | rosto inchou | cara inchada | labios inchados | lingua inchada | boca inchada |
        visage gonfle | levres gonfle | langue gonfle | gesicht geschwollen | gesicht ist geschwollen |
        gesicht ist ganz | lippen geschwollen | lippen sind | lippen schwellen | zunge geschwollen |
        zunge schwillt | gesicht schwillt | faccia gonfia | viso gonfio | labbra gonfie | lingua gonfia |
        mat toi sung to | mat sung to | sung het mat | sung mat het | mat sung het | sung moi | moi sung | luoi sung | mat mui sung | spuchnieta twarz |
        twarz spuch | usta spuch | jezyk spuch | spuchly mi usta | spuchnal jezyk | spuchla mi twarz |
        namamaga ang mukha | namamaga ang labi | namamaga ang dila | namamaga mukha | maga ang mukha |
        namaga ang labi | gezicht .* gezwollen | lippen .* gezwollen | yuzum sis | dudaklarim sis |
        dudagim sis | wajah bengkak | bibir bengkak | figi m anfle | лицо опухло | лицо отек | опухло лицо |
        отекло лицо | губы опухли | губы отек | язык отек | язык опух | распухло лицо | отек лица | 脸肿 |
        嘴唇肿 | 舌头肿 | 脸都肿 | 脸全肿 | 顔が腫 | 唇が腫 | 舌が腫 | 얼굴이 부 | 얼굴이 붓 | 입술이 부 |
        입술이 붓 | 혀가 부 | 얼굴 부 | وجهي منتفخ | وجهي متورم | وجهي ورم | شفايفي | شفتي متورم | شفاهي |
        لساني | وجهي تورم | وجهي انتفخ | פנים נפוח | הפנים שלי נפוח | שפתיים נפוח | לשון נפוח | चेहरा सूज |
        हाठ सूज | หน้าบวม | ปากบวม | ลิ้นบวม
    """,
    "hospital!": r"""
        hopital | ospedale | pronto soccorso | krankenhaus | notaufnahme | notarzt | hospital | ambulanc |
        ambulans | szpital | pogotowie | benh vien | cap cuu | ziekenhuis | hastane | spital | rumah sakit |
        lopital | больниц | скорую | скорая | 医院 | 急诊 | 救护车 | 病院 | 救急 | 병원 | 응급실 | مستشفى |
        طوارئ | اسعاف | בית חולים | מיון | अस्पताल | โรงพยาบาล | pronto socorro
    """,
    "faint!": r"""
        desmai | tontura | tonta | evanoui | vertige | malaise | ohnmacht | ohnmachtig | schwindel |
        schwindlig | svenut | svenire | svengo | giramenti | gira la testa | ngat xiu | chong mat | zemdl |
        mdleje | kreci mi sie | nahihilo | hihimatay | himatay | flauw | duizelig | bayil | lesin | ametit |
        pingsan | pusing | обморок | сознан | кружится голова | головокруж | 晕倒 | 头晕 | 头暈 | 昏倒 |
        気を失 | めまい | 기절 | 어지러 | اغمى | اغماء | دوخه | دوخة | دايخ | التعلف | סחרחורת | להתעלף |
        התעלפתי | चक्कर | बेहोश | เป็นลม | เวียนหัว
    """,
    "glue_in_eye!": r"""
        cola no olho | cola entrou | cola caiu | colle dans l'oeil | colle dans mon oeil | colle dans les yeux |
        kleber im auge | kleber ins auge | colla nell'occhio | colla nell occhio | keo vao mat | keo roi vao |
        keo dinh vao | klej w oku | klej do oka | klej wpadl | pandikit sa mata | glue sa mata |
        lijm in mijn oog | lijm in | yapistirici | клей в глаз | клей попал | попал клей | 胶水进 | 胶水流 |
        胶进 | 接着剤が目 | グルーが目 | 접착제가 눈 | 글루가 눈 | 본드가 눈 | غراء في عيني | الغراء دخل |
        الصمغ | דבק בעין | דבק נכנס | गोद आख | กาวเข้าตา
    """,
    "hives!": r"""
        urticaria no corpo | urticaria pelo corpo | corpo todo | tout le corps | ganzen korper | am ganzen |
        tutto il corpo | khap nguoi | na calym ciele | calym ciele | sa buong katawan | buong katawan |
        по всему телу | 全身 | 온몸 | 온 몸 | في كل جسمي | كل جسمي | بجسمي كله | بكل הגוף | בכל הגוף | पूरे शरीर |
        ทั้งตัว
    """,
    "pain!": r"""
        di ko na .{0,12}kaya | hindi ko na .{0,12}kaya | sakit na sakit | ang sakit sakit | nao aguento .{0,14}dor | dor .{0,14}nao aguento | nao suporto .{0,10}dor | supporte plus la douleur | halte .{0,14}schmerz.{0,12}nicht | schmerz.{0,16}nicht aus | non sopporto .{0,10}dolor | hou .{0,10}pijn niet | pijn niet uit te houden | не могу терпеть | терпеть невозможно |
        dor insuportavel | muita dor forte | dor muito forte | dor forte | douleur insupportable |
        insupportable | terriblement mal | unertraglich | schlimme schmerzen | starke schmerzen |
        dolore insopportabile | insopportabile | dolore fortissimo | dau khong chiu | dau du doi |
        dau qua khong | nie do zniesienia | okropny bol | straszny bol | hindi ko na kaya | di ko na kaya |
        sobrang sakit | ondraaglijk | dayanilmaz | insuportabil | невыносим | ужасная боль | сильная боль |
        очень сильно болит | 剧痛 | 疼得受不了 | 痛得受不了 | 疼死 | 痛死 | 激痛 | 耐えられない | 너무 아파 |
        참을 수 없 | الم شديد | ألم شديد | لا يحتمل | כאב נוראי | בלתי נסבל | असहनीय | ปวดมาก | ทนไม่ไหว
    """,
    "redness": r"""
        yn goch | yn coch | laal ho |
        knallrot | vermelh | avermelhad | rouge | rougeur | gerotet | rot\b | rote\b | roter\b | rotung |
        arrossa | ross[oaie]\b | rossore | bi do\b | mat do\b | do mat | zaczerwien | czerwon | namumula |
        pula\b | mapula | rood\b | \brode\b | roodheid | kizar | rosu | rosii | merah | wouj | красн | покрасне |
        发红 | 红了 | 很红 | 有点红 | 红红 | 充血 | 赤い | 赤く | 빨갛 | 빨개 | 충혈 | احمر | حمرا | احمرار |
        محمر | אדומ | אדום | אודם | लाल | แดง
    """,
    "swelling": r"""
        wedi chwyddo | chwydd | sujan | soojan | suj gay |
        inchad | inchou | inchaco | gonfl | geschwollen | schwellung | schwoll | gonfi | gonfiore | sung\b |
        spuch | opuch | namamaga | maga\b | gezwollen | opgezet | sisti | sis\b | umfla | bengkak | anfle |
        опух | отек | отёк | припух | 肿 | 腫 | 부었 | 부어 | 붓 | منتفخ | ورم | متورم | تورم | נפוח | התנפח |
        सूज | บวม
    """,
    "itching": r"""
        khujli | khujla | cosi yn | yn cosi | caasi |
        coca\b | cocando | coceira | cocan | demange | gratte | juck | prude | prurito | prurit | ngua | swedz | drapi | swedzi |
        makati | nangangati | kati\b | jeuk | kasin | mananca | gatal | grate | чеш | зуд | чеса | 痒 | 癢 |
        かゆ | 痒い | 가렵 | 가려 | 간지 | حكه | حكة | تحكني | بتحكني | מגרד | גירוד | खुजली | คัน
    """,
    "burning": r"""
        ardendo | \barde\b | ardem | queima | ardencia | brule | brulure | pique\b | piquent | brenn | bruci |
        rat mat | nong rat | rat\b | piecze | pieka | mahapdi | humahapdi | brand\w* | prikt | yanıyor |
        yaniyor | yanma | perih | boule | жжет | жжение | жж | щип | 灼 | 刺痛 | ひりひり | ヒリヒリ |
        しみる | 따가 | 화끈 | 따끔 | حرقان | حرقه | حرقة | تحرق | يحرق | שורפ | שורף | צורב | जलन | แสบ
    """,
    "pain": r"""
        doi muito | doi o | doi um | doi quando | doem | doendo | dor\b | dolorid | fait mal | font mal |
        douleur | douloureu | ai mal | schmerz | weh\b | tut weh | fa male | fanno male | dolore | dolent |
        dau mat\b | bi dau | dau qua | dau lam | bol[i]\b | bola\b | bol\b | masakit | sakit | pijn | pijnlijk | agri | acıyor | aciyor | doare |
        dureri | nyeri | fe m mal | болит | болят | боль | больно | 疼 | 痛 | 痛い | 아파 | 아프 | 통증 | يؤلم |
        تؤلم | الم | ألم | وجع | توجع | كואב | כואב | כואבת | כאב | दर्द | เจ็บ | ปวด
    """,
    "watering": r"""
        traan | lacrimej | lacriment | lagrimeja | lagrimas | larmoie | larmes | pleure | tran | trane\b | tranen |
        lacrima | lacrimano | chay nuoc | coule\b | coulent | chay nuoc mat | nuoc mat | lzawi | nagluluha | luha\b | sulan | lacrimeaza |
        berair | dlo nan | слез | слёз | 流泪 | 流淚 | 眼泪 | 涙 | 눈물 | دموع | تدمع | دمع | דומע | דמעות |
        पानी आ | น้ำตาไหล
    """,
    "gritty": r"""
        areia | du sable | wie sand | sand im | sabbia | cat trong mat | piasek | piasku | buhangin | zand in | pasir |
        песок | песк | 沙子 | 有沙 | 砂 | 모래 | رمل | חול בעין
    """,
    "discharge": r"""
        remela | secrecao | pus\b | croute | secretion | eiter | kruste | secrezione | ghen\b | ropa\b |
        ropiej | muta\b | pussend | capak | puroi | belek | гной | гноит | выделен | 分泌物 | 眼屎 | 目やに |
        눈곱 | افرازات | صديد | הפרשות | מוגלה | ขี้ตา
    """,
    "light": r"""
        halte kein licht | kein licht | licht nicht | lumiere | licht | luz incomoda | luz doi | lumiere me |
        lumiere fait | licht tut | lichtempfindlich | luce mi | luce da fastidio | fastidio la luce |
        so anh sang | choi mat | swiatlo razi | swiatlowstret | silaw | licht doet | fel licht | isik | lumina |
        silau | светобоя | свет реж | свет раздраж | 怕光 | 畏光 | まぶし | 눈부 | الضوء يؤلم | الضوء |
        رهاب الضوء | אור מפריע | แพ้แสง
    """,
    "vision": r"""
        embacad | flou\b | verschwomm | annebbiat | appannat | мутн | затуман
    """,
    "rash": r"""
        bolinhas | descamando | boutons | ausschlag | pusteln | eruzione | bolle\b | noi man | noi mun |
        wysypk | krost | pantal | butlig | uitslag | dokuntu | ruam | сыпь | прыщ | шелуш | 疹 | 起疹 | 湿疹 |
        脱皮 | 皮がむけ | 발진 | 두드러기 | طفح | حبوب | פריחה | चकत्ते | ผื่น
    """,
}

FACE = r"""
    gesicht | lippe | zunge | visage | levre | langue | gorge | rosto | cara | labio | lingua | boca | viso |
    faccia | labbr | mukha | labi\b | dila\b | twarz | usta\b | jezyk | mat em sung | moi\b | luoi | mat mui |
    gezicht | lippen | yuz | dudak | dil\b | wajah | bibir | figi | лиц | губ | язык | 脸 | 臉 | 嘴 | 舌 | 喉 |
    顔 | 唇 | 얼굴 | 입술 | 혀 | 목 | وجه | شف | لسان | פנים | שפת | לשון | चेहर | หน้า | ปาก
"""
FEVER = r"""
    febre | fieber | fievre | febbre | koorts | goraczk | lagnat | atesim | febra\b | demam | температур | лихорад | 发烧 | 發燒 |
    熱があ | 高熱 | 열이 나 | حمى | حراره | קדחת | बुखार | เป็นไข้ | πυρετο
"""
GLUE = r"""
    cola dentro | cola no | caiu cola | entrou cola | caiu removedor |
    kleber | remover | colle\b | dissolvant | cola\b | removedor | colla\b | solvente | keo\b | klej | zmywacz |
    pandikit | glue | lijm | yapistirici | lem\b | клей | клея | ремувер | ацетон | acetone? | aceton | 胶 |
    膠 | 卸 | 接着剤 | グルー | リムーバー | 접착제 | 제거제 | 글루 | 본드 | 리무버 | غراء | صمغ | دבק | דבק |
    ממיס | गोंद | กาว
"""
IN_EYE = r"""
    dentro do (?:meu )?olho | dentro dos olhos | dans mes yeux | in meine augen | in mein auge | nel mio occhio | nei miei occhi |
    in mijn ogen | in het oog | sa loob ng mata | мне в глаз | попал .{0,8}в глаз |
    ins auge | im auge | in den augen | in die augen | dans l.?oeil | dans les yeux | dans mon oeil | no olho |
    nos olhos | no meu olho | nell.?occhio | negli occhi | vao mat | trong mat | do oka | w oku | sa mata |
    mata ko | in mijn oog | gozume | gozum | la mata | di mata | в глаз | в глаза | в глазу | 眼睛里 | 进眼 |
    入眼 | 眼里 | 目に | 目の中 | 눈에 | 눈 안 | 눈으로 | في عيني | بعيني | عيني | לעין | בעין | आंख में | เข้าตา
"""
LEFT = r"""
    chwith |
    esquerd | gauche | link | sinistr | \btrai\b | lew[eya] | kaliwa | \bstang | \bkiri\b | лев | 左 | 왼 | يسار | شمال | שמאל | बा[यए]
"""
RIGHT = r"""
    direit | droit | recht | destr | \bphai\b | praw[eya] | kanan | \bdrept | прав | 右 | 오른 | يمين | ימין | दा[यए]
"""
FINE = r"""
    obrigad | amei | adorei | perfeit | maravilh | lind[oa]s?\b | tudo bem | tudo otimo | tudo certo | merci |
    j'adore | jadore | adore | parfait | magnifique | superbe | tout va bien | nickel | ravie | danke |
    super\b | wunderschon | schon\b | alles gut | alles bestens | zufrieden | liebe\b | grazie | bellissim |
    perfett | tutto bene | tutto ok | adoro | stupend | cam on | dep qua | rat dep | dep lam | thich lam |
    ung y | dziekuj | dzieki | piekn | cudown | wszystko dobrze | wszystko ok | zachwycon | salamat |
    ang ganda | ganda\b | sobrang ganda | okay naman | bedankt | dank je | dankjewel | prachtig | mooi\b |
    alles goed | tesekkur | cok guzel | bayildim | multumesc | superb | terima kasih | makasih | bagus |
    cantik | mesi | спасибо | благодар | красив | отличн | прекрасн | супер | нравит | всё хорошо | все хорошо |
    всё отлично | все отлично | довольн | 谢谢 | 感谢 | 喜欢 | 很好 | 好看 | 漂亮 | 满意 | 太美 | 很美 | 棒 |
    謝謝 | ありがとう | 綺麗 | きれい | 可愛い | かわいい | 素敵 | 最高 | 気に入 | 大丈夫 | 감사 | 고마 | 예뻐 |
    예쁘 | 이뻐 | 좋아 | 마음에 | 만족 | 최고 | 괜찮 | شكرا | جميل | حلو | روعه | روعة | ممتاز | تجنن | يسلمو |
    تمام | حبيت | תודה | מהמם | יפה | מושלם | הכל בסדר | अच्छ | धन्यवाद | शुक्रिया | सुन्दर | सुंदर | ขอบคุณ | สวย | ชอบ
"""
OVER = r"""
    sumiu | melhorou ja | fini\b | c.est fini | jetzt ist alles gut | jetzt alles gut | ist weg | wieder ok |
    alles wieder | nawala na | passou | ja passou | parti\b | c'est passe | c'est parti | passe maintenant |
    weg\b | vorbei\b | wieder gut | besser | passato | sparito | het roi | khoi roi | minelo | przeszlo |
    wala na | over\b | gecti | a trecut | sudah hilang | прошл | прошел | исчез | 没事了 | 好了 | 消了 | 退了 |
    治った | 治りました | 消え | 나았 | 없어졌 | 괜찮아졌 | 사라졌 | راح | اختفى | خف | עבר | נעלם
"""
# What was over is back: none of it where words of well-being follow ("alles wieder gut").
RETURNS = r"""
    wieder(?! (?:gut|ok|normal|weg|weiss|alles|in ordnung)) | erneut | de novo | outra vez | voltou | voltaram | a nouveau | de nouveau |
    recommenc | revenu | di nuovo | tornat | opnieuw | weer(?! (?:goed|ok|normaal|weg)) | terug | znowu | znow\b | wrocil | bumalik |
    ulit\b | na naman | tekrar | yine\b | снова | опять | вернул | 又 | 再次 | また | 다시
"""
NEAR = r"""
    quase | presque | fast weg | quasi\b | gan het | prawie | halos wala | bijna | neredeyse | aproape |
    hampir | почти | 差不多好 | 快好 | ほとんど | 거의
"""
NOT = r"""
    nao\b | sem\b | nahi | nenhum | pas de | aucun | pas\b | ni\b | kein | keine | nicht | ohne | non\b | nessun |
    senza | rien ne | khong\b | nie\b | brak | bez\b | hindi | wala\b | walang | geen | niet | yok\b | degil | nu\b |
    fara | tidak | tak\b | pa\b | не\b | нет\b | без\b | ни\b | 没有 | 没 | 不 | 无 | 沒 | ない | ません |
    なし | 없 | 안 | 않 | لا\b | ما\b | ليس | بدون | مافي | مش\b | אין | לא\b | ללא | बिना | नहीं | नही | ไม่
"""
RETENTION = r"""
    caindo | cairam | caiu\b | cilios ca | tombe | tombent | tombes | perdu | ausgefallen | fallen aus |
    fallen ab | verloren | cadut | cadono | perso\b | perse\b | rung\b | rung nhieu | wypad | odpad |
    nalalagas | natanggal | nalaglag | uitgevallen | vallen uit | dokul | cazut | rontok | copot | выпал |
    отвал | осыпа | отпал | выпада | 掉了 | 脱落 | 掉光 | 掉得 | 取れ | 抜け | 빠졌 | 빠져 | 떨어 | وقع |
    تساقط | طاح | נשר | נפל | झड | หลุด | ร่วง
"""
BOOKING = r"""
    agendar | encaix | manutencao | marcar | remarcar | horario | consulta\b | atrasad | rendez vous | rdv\b | reserver | annuler |
    decaler | deplacer | retard | termin\b | verschieben | absagen | umbuchen | verspat | spater |
    appuntamento | posso passare | passare alle | prenotare | prenotazione | spostare | ritardo | disdire | dat lich | doi lich | hen\b |
    lich\b | tre\b | huy lich | wizyt | przelozyc | umowic | spoznie | termin | appointment | magpa | sched |
    resched | male late | afspraak | verzetten | randevu | programare | reservasi | jadwal | janji | запис |
    перенес | опозда | отменить | 预约 | 改时间 | 改到 | 改期 | 取消 | 迟到 | 予約 | 遅れ | 변경 | 예약 | 늦 |
    취소 | موعد | حجز | احجز | تأجيل | اتاخر | الغاء | תור\b | לקבוע | לבטל | מאחר | अपॉइंट | นัด | จอง | เลื่อน
"""
QUESTION = r"""
    o que faco | posso\b | e normal | quando posso | como\b | que dois je | puis je | est ce que |
    c'est normal | normal\b | comment | was soll | soll ich | kann ich | darf ich | ist das normal | normale |
    cosa devo | posso | come\b | phai lam sao | lam sao | co sao khong | duoc khong | binh thuong |
    co binh thuong | czy\b | co robic | normalne | ano gagawin | ano ang | pwede ba | normal ba | mag ik |
    wat moet | kan ik | ne yapmali | normal mi | ce sa fac | apakah | harus | что делать | можно ли | можно\b |
    нормально ли | это нормально | сколько | 怎么办 | 可以 | 正常吗 | 吗 | 怎么 | どうすれば | ですか |
    いいですか | 어떡 | 어떻게 | 될까 | 되나요 | 괜찮을까 | 인가요 | هل\b | ماذا | شو اعمل | ايش اسوي | طبيعي |
    מה לעשות | האם | מותר | זה נורמלי | क्या | ไหม | ทำยังไง
"""
STOP = r"""
    geen bericht | geen mail | geen app | stuur .{0,14}niets meer | niks meer sturen | afmelden | uitschrijven |
    nao me mand | nao me escrev | nao mand | mais mensage | nao quero mais | parar de receb | descadastr |
    me tirem | tira meu numero | apague meu | ne plus m.?envoyer | ne plus m.?ecrire | ne m.?ecrivez plus |
    ne m.?envoyez plus | stop aux | arretez | supprimez mon | retirez moi | desinscri | keine weiteren |
    schreib.{0,12} nicht mehr | nicht mehr kontakt | meine nummer losch | nummer aus | losch.{0,20} nummer |
    nie pisac | usunac moj | usun.{0,6} moj | prosze usun | wiecej nie | nie wysyl | non scriv |
    non mand.{0,10} piu | non contatt | toglietemi | smettetela | rimuovete | dung nhan tin | dung gui |
    khong muon nhan | xoa so | ngung nhan | dung nhan | huwag na .{0,12}text | huwag na .{0,12}mag |
    tanggalin .{0,10}number | ayaw ko na | tigilan | niet meer | verwijder | geen sms | artik mesaj |
    mesaj istemiyorum | listeden cik | 不要再 | 别给我发 | 不想收 | 别再给 | 删除我的 | 取消短信 | 拉黑 |
    メッセージ.{0,4}(?:不要 | いりません | やめ | 止め) | 送ってこないで | 連絡しないで | 보내지 말 |
    문자 보내지 | 연락하지 | 연락 하지 | 삭제해 | 그만해 | 차단 | لا ترسلو | لا تبعث | ما تبعث | وقفو | الغو |
    احذف | لا اريد | ما بدي رسائل | ما ابي رسائل | لا تتواصل | تمسحوا | אל תשלח | תורידו אותי | תמחקו |
    די לשלוח | לא רוצה לקבל | перестаньте | удалите | уберите мой | не надо писать | не пишите | прекратите |
    не хочу получать | не присыл | не отправл | отключите рассылк | pare de | parem de | nao me envie |
    nao quero receber | nao mandem | nao envie | me tire da lista | sair da lista | descadastrar |
    arreter de m | ne m'envoyez | ne plus recevoir | plus de messages | plus de sms | desabonn | desabonner |
    keine nachrichten | keine sms | nicht mehr schreiben | aufhoren | abmelden | abbestellen |
    schreiben sie mir nicht | basta messaggi | non scrivetemi | non mandatemi | non inviatemi | cancellatemi |
    cancellami | non voglio piu | ngung gui | dung lai | huy dang ky | nie pisz | prosze nie | przestan |
    wypisz | wypisac | rezygnuje | huwag na | tigil | wag nyo na | wag na kayo | wag na mag | itigil |
    stop met | geen berichten | afmelden | mesaj atma | mesaj gonder | nu mai trimite | dezabon | berhenti |
    jangan kirim | stop\b | отпишите | отписаться | не присылайте | удалите мой | больше не | хватит |
    不要再发 | 别再发 | 停止发 | 退订 | 不要发 | 取消订阅 | 别发 | 不要給我 | 送らないで | 送信しないで |
    停止して | 配信停止 | やめて | 보내지 마 | 그만 보내 | 수신거부 | 수신 거부 | 문자 그만 | لا ترسل | وقفوا |
    توقف عن | الغاء الاشتراك | لا تراسل | تفضلوا لا | بطلوا | להסיר אותי | תפסיקו | הסירו אותי | אל תשלחו |
    मत भेज | บंद करो | หยุดส่ง | เลิกส่ง
"""
WRONG = r"""
    numero errado | mauvais numero | faux numero | erreur de numero | falsche nummer | falschen nummer |
    numero sbagliato | sbagliato numero | nham so | so sai | zly numer | pomylka | wrong number |
    maling numero | verkeerd nummer | yanlis numara | numar gresit | salah nomor | не туда | ошиблись номер |
    ошиблись | 发错 | 打错 | 番号違い | 間違い | 잘못 보내 | 번호 잘못 | رقم خطأ | رقم غلط | الرقم غلط |
    טעות במספר | मिस्टेक | गलत नंबर | ผิดเบอร์
"""
