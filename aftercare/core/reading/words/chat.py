"""How chat spells: one written form, the word that the lexicon has for it."""

from __future__ import annotations

_SPELLINGS = """
    agen=again agn=again agin=again agian=again shd=should incho=hincho inchan=hinchan incharon=hincharon inchazon=hinchazon
    fase=face wnt=wont wunt=wont opin=open dubble=double dubel=double doubel=double closeing=closing
    troat=throat tung=tongue brething=breathing breeth=breathe breath'n=breathing swolow=swallow swollo=swallow
    carnt=cant cudnt=couldnt wudnt=wouldnt stp=stop txtng=texting txtn=texting stopp=stop msgng=messaging msgn=messaging
    emaling=emailing ynchado=hinchado ynchada=hinchada yncho=hincho hynchado=hinchado
    u=you ur=your urs=yours yall=you r=are n=and nd=and w=with w/=with w/o=without b/c=because wit=with b4=before bc=because cuz=because
    coz=because cos=because bcuz=because bcoz=because becuz=because becoz=because lil=little lill=little
    ltl=little litle=little nite=night nites=nights 2nite=tonight tonite=tonight 2day=today tday=today tdy=today
    2moro=tomorrow tmrw=tomorrow tmr=tomorrow tmw=tomorrow tmro=tomorrow tomoro=tomorrow tomorow=tomorrow
    2morrow=tomorrow tmmrw=tomorrow yest=yesterday yday=yesterday ystrday=yesterday yesterdy=yesterday
    pls=please plz=please plss=please plzz=please plse=please abt=about bout=about gud=good gd=good goood=good
    wud=would cud=could shud=should shld=should wld=would cld=could dnt=dont doe=though tho=though thou=though
    thru=through ppl=people msg=message msgs=messages txt=text txts=texts tounge=tongue tonge=tongue
    toung=tongue tungue=tongue thoat=throat throught=throat txting=texting txtin=texting mssg=message
    appt=appointment appts=appointments appoint=appointment apptmt=appointment appmt=appointment
    appointmnt=appointment appointmet=appointment apt=appointment appiontment=appointment prolly=probably
    prob=probably def=definitely rlly=really rly=really realy=really reely=really vry=very v=very nt=not
    nthin=nothing nuthin=nothing nothin=nothing nuffin=nothing nutin=nothing somethin=something
    sumthin=something smth=something sth=something sumthing=something summat=something anythin=anything
    everythin=everything evrything=everything cnt=cant cannt=cant kant=cant caint=cant brth=breath breth=breath
    breathin=breathing breethe=breathe brethe=breathe braethe=breathe openin=opening opne=open opn=open ey=eye
    eyez=eyes eys=eyes eie=eye eyelit=eyelid eylid=eyelid eyelds=eyelids eyeld=eyelid lft=left rite=right
    rght=right wat=what wut=what wht=what hw=how bin=been havnt=havent havn=havent hav=have hve=have dint=didnt
    didn=didnt doesn=doesnt isn=isnt wasn=wasnt hasn=hasnt ain=aint jus=just jst=just js=just juss=just alot=lot
    sooo=so soo=so stil=still sitll=still stll=still hrs=hours hr=hour mins=minutes min=minutes wk=week
    wks=weeks tue=tuesday tues=tuesday wed=wednesday weds=wednesday thu=thursday thur=thursday thurs=thursday
    fri=friday fris=friday iam=im dats=thats dat=that dis=this dem=them tha=the teh=the xq=porque pq=porque
    pk=porque porq=porque q=que k=que qe=que ke=que bn=bien vien=bien tb=tambien tmb=tambien d=de dl=del
    xfa=porfa pf=porfa mñn=manana tngo=tengo stoy=estoy toy=estoy pa=para mxo=mucho mcho=mucho muxo=mucho
    grx=gracias grcs=gracias grac=gracias ojs=ojos hsta=hasta pro=pero aserca=acerca ase=hace ace=hace ora=hora
    asta=hasta aller=ayer oi=hoy oy=hoy entonses=entonces entons=entonces neva=never nvr=never evn=even
    bcs=because sry=sorry srry=sorry ion=dont iont=dont finna=gonna tryna=trying gon=gonna boutta=about
    yrs=years yr=year sm=much soooo=so dizy=dizzy tingley=tingly squeezin=squeezing closin=closing poundin=pounding cryin=crying
    liek=like cnat=cant waht=what adn=and thsi=this jsut=just taht=that becuase=because somethng=something
    teh=the hte=the thru=through sumtin=something sumn=something somthing=something swolen=swollen dificulty=difficulty
    difficultys=difficulty dificult=difficult sittin=sitting standin=standing beathe=breathe breate=breathe ive=ive
    beter=better betta=better bettr=better lookin=looking feelin=feeling gettin=getting goin=going
    killin=killing comin=coming fallin=falling
    cyaan=cant cyan=cant cyah=cant heid=head oot=out aboot=about yeukie=itchy yeuky=itchy yuky=itchy scart=scratch
    scartin=scratching hing=thing hings=things wisnae=wasnt isnae=isnt cannae=cant cannie=cant dinnae=dont didnae=didnt
    willnae=wont hasnae=hasnt havnae=havent wasnae=wasnt couldnae=couldnt aye=yes een=eyes ees=eyes awfy=awfully wis=was noo=now nicht=night nowt=nothing owt=anything mawnin=morning abit=bit
    2moz=tomorrow tomoz=tomorrow 2mo=tomorrow alr=already rmv=remove wot=what dsd=desde yesty=yesterday
    arvo=afternoon avo=afternoon sumfin=something sumfink=something nuffink=nothing fink=think wiv=with
    summink=something tho'=though aki=aqui akí=aqui inchado=hinchado inchada=hinchada inchados=hinchados
    inchando=hinchando hinchao=hinchado pestanias=pestanas ksa=casa ntp=nada grasias=gracias makati=itchy
    throte=throat throut=throat thrut=throat swallerin=swallowing swallering=swallowing swollowing=swallowing everywhr=everywhere evrywhere=everywhere evrywhr=everywhere brokeout=broke sowwy=sorry tounges=tongues diff=different
    hurted=hurt itcheando=itching itchea=itches itchean=itching fyn=fine gr8=great l8r=later l8=late m8=mate
    ichy=itchy iched=itched ich=itch iching=itching ichting=itching itchng=itching itiching=itching stoped=stopped stopt=stopped easeing=easing
    redd=red dyas=days mornign=morning mornin=morning rihgt=right rigth=right letf=left sensative=sensitive soar=sore
    nomal=normal lagriman=lagrimean blury=blurry yrs=years wks=weeks eylids=eyelids eyelides=eyelids swoolen=swollen
    rjo=rojo rjos=rojos rja=roja rjas=rojas ozos=ojos oyos=ojos ojoz=ojos parpdo=parpado parpdos=parpados bb=bebe
    itcheando=itching itchea=itches itchean=itching fyn=fine gr8=great l8r=later l8=late m8=mate
"""
CHAT = {written: word for written, _, word in (pair.partition("=") for pair in _SPELLINGS.split())}
