"""English for an end of messages, for a wrong number, and for replies that mean nothing by themselves.

How phrases are written: `aftercare.core.reading.phrases`; words are spelled as `tokens` folds them.
"""

from __future__ import annotations

CLASSES = {
    "msg": """
        nudges nudge pings texts text txts txt messages message msgs msg emails email e-mails mails mailings reminders reminder
        notifications notification spam sms correspondence newsletters newsletter updates promos marketing
        communications blasts messaging texting emailing contacting
        checkins checkin followups followup surveys alerts chasers prompts dms
    """,
    "endit": """
        stop quit cease end kill cancel cancelling canceling enough halt discontinue ditch axe cut drop lose unsubscribe pause silence
        mute over done
    """,
    "write": """
        text message msg contact email write call texting messaging contacting emailing writing calling texted
        messaged contacted spam spamming bother bothering reach ping pinging
    """,
    "data": """
        number # cell phone details info information name email address contact data account mobile numbers
    """,
    "lifething": """
        mascara makeup eyeliner liner falsies strips strip foundation concealer smoking wine men dating carbs sugar coffee
        mornings monday mondays work adulting dairy netflix gym vaping drinking alcohol meat gluten exes
    """,
    "name": """
        sarah jessica emma olivia laura denise brenda chantelle michelle karen linda susan lisa amy emily hannah chloe
        lauren kelly nicole rachel rebecca amanda melissa stephanie jennifer tracy sharon julie claire helen jane anna
        maria sophie lucy katie charlotte grace holly megan natalie samantha vanessa tiffany ashley brittany
        priya fatima aisha ngozi chioma siobhan niamh aoife mary margaret patricia barbara elizabeth
    """,
    "kin": """
        mum mom mam mother wife husband dad father gran nan granny grandma sister brother daughter son aunt aunty auntie
        uncle partner fiance fiancee
    """,
    "wipe": """
        delete remove erase expunge scrub wipe take taken strike drop get removed deleted struck lose forget unlist
    """,
}

COMMANDS = {
    "stop": """
        where|this our|the|my|your
        correspondence|conversation|acquaintance|chats|thread|exchange|messaging|texting|relationship
        is|where|must|should|can|will? ends|end|stops|stop|finishes|finish|over,
        appreciate|enjoy|like|love|welcome|value their|your|the absence|silence|quiet, no more
        kindly|thank|thankyou|cheers, correspondence ends|end|over, dont|not|never <write> me .. or|and ever,
        last|final follow up|followup|checkin|check|survey|questionnaire|<msg> .. i|we
        want|need|wanna|wish|care|expect, pack in the|these|your|ur|all|with <msg>, struck from your|the|all, be
        struck off|from, not to get|receive these|this anymore|again, text|message|pester|email|contact
        someone|somebody who, text|message|pester someone|somebody else please|pls|thanks|instead|for,
        dont|do|not|never be|get|keep|stay be|get|keep|stay? in touch|contact, reply to me again, not reply to me,
        dont reply to me, word|code|button|link|number to stop|end|quit|cancel these|them|this|it|texts|messages,
        how|where do|can i|we stop|end|quit|cancel|leave getting|receiving|hearing|<msg>, how|where do|can i|we
        stop|end|quit|cancel|leave these|this|your|the|all <msg>, erase|delete|wipe|remove|destroy|scrub
        everything|anything|whatever you|u|ye hold|have|got|keep on|about|of, spare me the|your|ur
        check|checks|follow|nagging|questions|updates, nobody|noone asked stop, no one asked stop, no
        thanks|thank|ta you|u|ye? to|on .. <msg>|check|checks|follow|further, not interested in|by ..
        check|checks|follow|followups|updates|these|being, no more|further|any check|checks|follow
        ins|ups|in|up|questions, stop|quit|lose|ditch|kill|skip|bin|drop|end|axe|cut|scrap
        the|these|your|ur|with|all check|checks|follow ins|ups|in|up, shut|close|wind|switch|turn
        it|them|these|this? down|off with|on .. <msg>|check|checks|thing, last|final text|message|msg|reminder|email
        please|pls|plz|ta|cheers, can|could|may|let|lets|make|will|would|shall this|that|it|these be? the|your|our?
        last|final one|text|message|msg|reminder|email|ping|contact, drop me
        please|pls|plz|ta|now|thanks|altogether|completely, ditch me please|pls|from, take me out please|of, get me
        out of, stop|quit|cease|pls|please|u|you hitting|hittin|blowing|lighting|pinging|buzzing|blasting up?
        my|this|me|our phone|cell|line|inbox|up|mobile, quit hitting my, stop hitting my,
        block|remove|delete|unlist|mute me|my|this|us .. from|on|at|your|ur end|side|system|database,
        goodbye|farewell|adios|bye|cheerio|tata|sayonara to your|ur|the|all|these|this .. list|<msg>|mailing, this
        is my goodbye|farewell, my goodbye to your, sick|tired|bored|fed|had|weary of|up|with enough|of?
        hearing|getting|receiving from|these|this|texted|messaged?, sick|tired|bored|weary of being
        texted|messaged|reminded|chased|pestered|hounded, been|bin|binned my|this|the number|contact|digits|details,
        bin my number, dont|not snd|txt|msg me|us, snd me no|ne|any, dnt|dont txt|snd|msg,
        whisht|wheesht|haud|shoosh|hush|shush with|wi|the .. <msg>, no|not|nae wanting|wantin|needing
        them|these|yer|your|any|more? <msg>, no wanting them|these|any, dont|not|never
        wish|want|care|need|like|expect to? hear|hearing from you|u|ye|yous|yall|this, no wish|desire|need|interest
        to|in hear|hearing from, want|wanna off it|this|your|ur, want off it, dont|not|never be
        sending|texting|messaging|emailing|writing, no more
        bot|auto|automated|daily|annoying|random|stupid|bloody|damn|of? your|ur|the|these? <msg>, leave me|us
        be|alone, leave us|me to it, is where i get|hop|jump off, thats where i get|hop|jump off,
        cross|take|tick|strike|score|rub|scratch me|us off your|ur|the|these|all|them|those? <msg>|mailing, cross me
        off your|the messages, give the|your|these|it .. <msg> a rest|break|miss, shove|stick|stuff|keep
        your|ur|the|these .. <msg>, subscribed|registered|added|enrolled|joined by|in mistake|error|accident, signed
        up .. mistake|accident|error .. remove|off|out|cancel|undo|delete, replied|texted|pressed|hit|sent start ..
        reverse|undo|cancel|mistake|accident, call|calling time on .. <msg>, knock .. <msg> on, sooner|rather|prefer
        not be? getting|get|receive|receiving .. <msg>, not be getting .. <msg>, no more of them|these|those|it
        please|pls|thanks|thank|ok, let that|this|it be the|your last, last i|we hear from, the last i|we .. hear,
        last you send|text|message|write, one reminder|text|message is plenty|enough, <write> me .. one more time
        and|or, <write> me again and .. block|report|scream|swear|sue|throw|blocking|reporting, one more <msg> and
        .. block|report|done|out|scream|gone|throwing|blocking, wipe me please|now|from, call off ..
        <msg>|machine|bot|robot|reminders, turn|switch|shut your? machine|bot|robot off, turn|switch|shut|call off
        the|your|this machine|bot|robot|auto|automatic|automated, stop the machine|bot|robot, no more of
        your|ur|those|the|them <msg>, let my number go, expunge my, my particulars, pipe down forever, pipe down
        now, never want these|your|the|any|more <msg>, never want <msg>, never want to hear, nuh bother <write>, nuh
        <write>, no send me <msg>|message, no send me .. again, make una no send|text, abeg no send|text|message, no
        <write> me again|more|anymore, no text me, no message me, no dey send|text|message me, no
        point|use|sense|reason|call|cause .. sending|texting|messaging|contacting|emailing|reminding .. me, no need
        to be <write> me, no need for these|the|any|all|more? <msg>, sooner ye|you|u|yous didnt, rather
        ye|you|u|yous didnt|not, enough with|of the|your|these|all|this <msg>, enough <msg>, enough now .. <msg>,
        full enough .. no more, no more now please|pls|thanks|thank, no more now, let my|the
        phone|telephone|mobile|cell .. be|stay silent|quiet|alone|peace, leave me|us in peace|alone|be, leave me|us
        out of|off, leave me out, not one for .. <msg>, not a fan of .. <msg>, not big on .. <msg>, mind not
        <write>|sending|reminding, mind awfully not, not sending me|us? any|anymore|more|these|further,
        cross|scratch|rub|score|tick|bump|kick me|us|number off|out, not get|getting|receive|receiving
        these|those|this|them|your|any|anymore|more, able to not get|receive, last of the|these|your <msg>, dont|not
        wish|want to? receive|get|be more|any|anymore|these|reminded|contacted|checked, not wish|want receive, dont
        wish receive, not want to? be
        rated|surveyed|checked|texted|contacted|messaged|bothered|pestered|chased|reminded|followed|on, leave off
        checking|texting|messaging|asking|sending, can leave off, you|ye can stop checking|now, no need to
        check|keep|follow|text|message|write|ring|contact .. me|again|anymore|up|more, dont need|want|require
        checking|reminding|chasing|minding|babysitting|following|updates, without your|these|the <msg>, do without
        .. <msg>, live without .. <msg>, rid of .. <msg>, off the menu for good, ye|you|u can
        cross|take|strike|scratch|delete|drop me|my, away with .. <msg>, no <msg> please|pls|thanks, no longer
        interested in .. <msg>, no longer need|require|want .. <msg>, no longer want your <msg>?, dont require ..
        <msg>, desist, would like to be taken|removed|off, like out of|off, let me off|out ..
        list|this|texts|messages, stop the|your|ur|all|sending|blasting|filling <msg>, stop <msg>, stop
        pestering|hounding|harassing|annoying|pinging|buzzing|nagging|hassling|badgering me?|us?, quit
        pestering|hounding|harassing|annoying|pinging|buzzing|nagging|hassling, harassing me, this is harassment,
        phone never stops .. list, please desist, kindly remove|delete|take me|my, kindly
        discontinue|refrain|stop|cease|unsubscribe|desist, dont|not
        ping|buzz|ring|nag|chase|hound|pester|hassle|disturb me, not to be disturbed, dont disturb me, not disturb
        me, hear from you no more|again, hear nothing from, dont want to hear from, not hear from, not interested in
        hearing, no more contact, break up with .. <msg>, breaking up with .. <msg>, part ways with .. <msg>, say
        goodbye to .. <msg>, goodbye to .. <msg>, shut off .. <msg>, shut up with .. <msg>, shut these off, switch
        .. <msg> off, switch these off, knock these|them|the <msg>? off|on, knock .. <msg> on the head, on the head
        please, lay off .. <msg>, ease off .. <msg>, back off, hop off my phone, off my phone, out of my
        phone|inbox|life, get out of my phone|inbox, stay out of my, bin the|these|my <msg>?|number, chuck my
        number, mute me, dont include|add me, exclude my, do not include me, had it|enough|up with|of
        the|your|these|all|ur|those <msg>, save yourself|yourselves|urself the|some?
        bother|effort|pennies|trouble|breath, my number|details|email|info|data|name
        removed|deleted|wiped|erased|forgotten, <write> me? again ..
        report|block|sue|ico|ofcom|fcc|police|solicitor|lawyer, report it|this|you|u to the?
        ico|fcc|ofcom|authorities, youre|ur blocked, consider yourself|yourselves blocked, you are|r blocked, no
        want <msg>|more|this, me no want <msg>, rather|prefer|like|want|wish to? be left|let alone|be|in, consider
        me|us|myself unsubscribed|out|gone|off|opted|removed|quit, consider this my|an|a|as
        opt|unsubscribe|notice|request|stop|optout|withdrawal, revoke my, withdraw my permission, dont have my?
        permission, no permission to <write>, never gave .. permission|consent, i do not consent, gdpr, data
        protection, report you, reported as spam, marked as spam, blocked .. number, blocking .. number, blocking
        this, blocking you, going to block, ill block, i will block, will be blocking, block yourselves|yourself,
        unsubscribe me, un subscribe, unfollow me, unenrol me, unenroll me, deregister me, sign me off|out, opt me
        out, opt us out, count me out of|from, pull my number, pull me off, drop me from|off, lose me from, discard
        my, purge my, cancel my|the|these? reminders|texts|messages|alerts|notifications|updates, silence .. <msg>,
        put a stop to .. <msg>, call a halt, call it quits .. <msg>, thats enough .. <msg>, had enough of .. <msg>,
        sick of .. <msg>, tired of .. <msg>, fed up .. <msg>, over .. <msg> now, through with .. <msg>, less of the
        <msg>, spare me .. <msg>, save your|ur|the .. <msg>, save your pennies|money|breath .. <msg>|me, wasting
        your .. <msg>, dont bother <write>|sending, dont bother with .. <msg>, not bother <write>|sending|me, never
        <write> .. again, never again <write>|contact, no reply needed .. stop, dont want any more of
        these|them|those, dont send these|those|them|any|anymore|more, do not send these|those|them|any|more, dont
        keep sending|texting|messaging|asking, do not keep sending|texting|messaging, not keep
        sending|texting|messaging, cut the <msg>, cut these out, cut it with, quit these|the|your|ur|all? <msg>,
        lose the <msg>, ditch the <msg>, drop the <msg>, end of .. <msg> please, jog on, bugger off, piss off, fuck
        off, feck off, naff off, sod off, send no further ones, send no further, no further ones|messages|texts|sms,
        kindly desist, desist from sending|texting|messaging, final text|message which|that|i|from, last
        text|message i|from you, want no more of such|these|those|your messages|texts|this?, f|eff|bog|buzz off, get
        stuffed, just|please|so get lost, let this|that|it be the? final|last one|text|message|reminder|ping|time,
        <msg> are .. last thing i need|want, last thing i need .. <msg>, dont|not|never hit my|this|me
        line|phone|cell|number|inbox|dms|up|again|no|anymore, bored|tired|sick|weary of|with getting|receiving
        these|them|those, none would be better|best|lovely|ideal|great|perfect|nice, be|am|left off|from
        these|the|your|any|all check|checks|mailing|messages|texts|reminders, left off the|your|these
        list|lists|messages|texts|reminders|check, let|make this|that one|message|text|be|the? be? the? last|final
        one|x|please|message|text?, make sure|certain there|theres|that are|is|no no|more more|of?, make
        these|the|your|those texts|messages|reminders|msgs go|stop|end|disappear away?, live|do|manage|cope without
        the|your|these|any|all texts|messages|reminders|msgs|pings|check, texts|messages|reminders|msgs|pings i
        could|can live|do|manage|cope without, next|one one|more of|text|message these|this|those?
        gets|is|and|youre|your blocked|reported, want|like|need|wish|prefer .. these|them|messages|texts|reminders
        ended|stopped|discontinued|terminated|halted, never signed for|up, kindly cease|halt|stop|end, come|coming
        off the|your|ur|these reminders|texts|messages|list|emails|alerts, dont|not send here|nothing, finish with
        texting, done with .. texts|messages|texting, do not|dont hit this phone|line|number, hit this phone no,
        make these texts|messages end|stop|quit, these texts end, texts quit coming|comin, leave off
        texting|messaging, unsubscribed twice, ive unsubscribed, im good on these messages|texts, sooner you didnt
        text|message, rather you didnt text|message, no need to text|message me, quit textin|texting me, i want out
        of|these|this, no more wit|with these texts|messages, no more of these texts|messages, dont want no more of
        these|texts|messages, want out of, out of your text|texting|message|messaging|sms|email|reminder
        list|system|thing|service, stop them, stop these, stop it all, dont need the check ins, dont need check ins,
        dont need .. check ups, no check ins|checkins, stop the check ins|checkins, stop checking, <endit> .. <msg>,
        no more <msg>, no further <msg>, dont be? <write> me|us|this|here|again|anymore|any, do not be? <write>
        me|us|this|here|again|anymore|any, not be? <write> me|us|again, not .. <write> me .. again|more|anymore, not
        .. send me more|any|anything|further|another|these|this|those, never <write> me, <wipe> my|this|me ..
        <data>, <wipe> .. <data> from|off|out, <wipe> me off|from|out, off ..
        list|database|system|records|emails|texts|mailing|roster|book, be taken off, be removed, taken off ..
        marketing|emails|texts|list, bore off, give it a rest, pack it in, jog on with, block and report, block if,
        report if, if u|you text .. again, refrain from <write>, refrain from, not consent, do not consent, dont
        consent, hard pass on .. <msg>, no thanks on .. <msg>, not wanting .. <msg>, not want .. <msg>, not
        necessary to <write>, no need to <write> me? again|anymore, no sense in .. <write>, let this be the last,
        leave it there, last <msg> .. please, make .. <msg> stop, make these stop, make it stop please, make them
        stop, done with these, im done with yall|you|u|these, i never signed up, didnt sign up for, never agreed to
        <msg>, didnt agree to .. <msg>, didnt ask for .. <msg>, sufficient correspondence, not interested anymore ..
        <write>|<msg>, no interest in .. <msg>|hearing, hearing from you again, quit it with, stop .. <write> me,
        stop with all, stop hitting me, stop blowing up my phone, quit blowing up my phone, stop spamming, off this
        thing, get off my phone, exclude me, opted out, opt .. out, unsubscribe, unsubscribing, unsub, unsubs, opt
        out, opting out, optout, stop
        texting|messaging|sending|emailing|contacting|calling|writing|spamming|bothering|these|all|with|msging|txting|pestering|blowing|hitting|bugging|notifications|notifying|reminding,
        stop it with, stop text|txt|message|msg|contact me, stop .. texts|messages|msgs|emails|reminders|spam, quit
        texting|messaging|sending|emailing|contacting|calling|writing|spamming|bothering|blowing|msging|pestering|hitting,
        dont text|txt|message|msg|contact|email|send me|this|anymore|any|again|here|us, do not
        text|txt|message|msg|contact|email|send me|this|anymore|any|again, dont ..
        text|txt|message|msg|contact|email me, never text|message|contact|txt me, no more
        texts|text|messages|msgs|emails|reminders|of these|txts|of this|automated|notifications|mail|check, no more
        of these|this|those, take me off, take my number, take this number, take us off, get me off|this|my, remove
        me, remove my number|phone|name|email|from|details|info, remove this number, delete my
        number|phone|info|details|data|email|contact, delete me, lose my number, lose this number, leave me alone,
        leave us alone, off .. list, off your list, off ur list, off this list, off the list, out of your list, not
        interested in .. texts|messages|receiving, dont want ..
        texts|messages|msgs|emails|reminders|notifications|receiving|these, dont wanna .. texts|get|receive|these,
        do not want .. texts|messages|emails|reminders|these|receive, dont wish to receive|get, do not wish to
        receive|get, no longer wish|want to? receive|get|be|texts|these|messages, dont need ..
        texts|messages|reminders|emails, rather not get|receive, prefer not to get|receive|be texted, wish to stop
        receiving, want to stop receiving|getting, like to stop receiving|getting, withdraw .. consent, revoke ..
        consent, i revoke, cease and desist, cease, block{ing/} you|this number|u, will block, gonna block, report
        as spam, reporting as spam, stop it with the, stop now please, please stop, pls stop, plz stop, stop please,
        stop pls, stop plz, stop already, just stop, stop stop, stop all, enough texts|messages|with|of the|already,
        too many texts|messages|msgs|emails .. stop, cut it out, cut out the texts|messages, knock it off, cancel
        these texts|messages|reminders, cancel my subscription, cancel the texts|messages|reminders, cancel
        text{s/}, cancel messages, end these texts|messages, end the texts|messages, end texts, turn off ..
        texts|messages|reminders|notifications|these, turn these off, switch off .. texts|messages|reminders, can
        you stop, could you stop, can u stop, could u stop, would you stop, kindly stop, stop sending, stop with,
        make it stop texting, i said stop, asked you to stop, told you to stop, said to stop, stop means stop, stop
        spam, spam me, stop bothering, quit bothering, leave me off, keep me off, strike me off, strike my number,
        scrub my number, wipe my number, forget my number, erase my number, discontinue, no further|more
        communication{s/}|contact|messages|texts, no further contact, not receive .. further|more|any, not to
        receive, not to be contacted, not be contacted, dont contact, do not contact, please no more, no more pls,
        no more please, no more msgs, dont want them any longer|anymore, dont want these any longer|anymore, do not
        want them|these any longer|anymore, turn .. <msg> off, turn .. <msg> .. off, how do i turn .. off, get these
        to stop, make .. stop texting, not want .. any longer, not getting|receiving these|them|texts|messages|this
        anymore, not .. getting .. anymore, dont want .. phone buzz{ing}, dont blow|blowing up my phone, blow up my
        phone, blocking the next, block the next, dont blow up, wish|want|like|asked|asking|need to be
        contacted|texted|messaged|emailed|called further|again|anymore, not .. to be
        contacted|texted|messaged|emailed, get off this|the|your|ur list, prefer|rather|like not .. <msg>,
        prefer|rather not to? get|receive|have, no need .. send|text|message|email|write|ping .. anymore|again|now,
        no need .. send|text|message|email|write|ping .. any more, dont need .. send|text|message|email ..
        anymore|again, dont need .. send|text|message|email .. any more, no need for ..
        texts|messages|emails|reminders|these, youll want to take me off, you can|may take me|us off, cross me off,
        tick me off the list, you|u|ye|yous didnt|dont|wouldnt text|message|email|contact|send|write
        me|us|these|this? again|anymore|further, appreciate|grateful|obliged .. you|u stopped|stop
        texting|messaging|emailing|contacting|sending|writing, i want out, i wanna out, let me out of this|these|the
    """,
    "notstop": """
        take|strike|scratch|cross|pull|knock|wipe|get me|us|mine off|out|from|down of? the|for|your|my?
        <day>|<nth>|<clock>|diary|calendar|schedule|rota|appointments|slot|noon|morning|evening|afternoon|waitlist|waiting|cancellation,
        drop|knock|take|bump me|us|it|mine from|down a|the|my?
        full|set|volume|hybrid|mega|classic|classics|fill|infill|<day>|<nth>|<clock>|half|10|11|12|1|2|3|4|5|6|7|8|9,
        tick|check|cross me off, so? no need to ring|call|phone me? now|then|back|today|tonight|tomorrow?, no more
        .. hurting|pain|itch{ing}|burn{ing}|swelling|crying|stinging|agony|watering, take .. no more .. this|it,
        unsubscribed from mascara|makeup|men|dating, text|message|ring|call|email|txt me
        when|if|once|before|as|back, reminder|reminders|text a|an|one|two|2
        day|days|week|hour|hours|earlier|later|sooner, remind me earlier|later|sooner, dont|never|not ever? stop
        doing|making|lashing|being|what|working|creating|giving, stop doing this|the|your job|work|magic,
        unsubscribed|opted|unsubscribing|unsubscribe from|out|of
        mascara|makeup|life|strips|falsies|reality|dating|men|diets|adulting|society|winter,
        text|texting|texts|messages only|instead, only text|texting|texts, from this end|side, at this|my end, on my
        end, pocket|butt|arse|accidental|wrong text|dial|message|call|typed|texted|dialled, cat|toddler|kid|baby
        sent|typed|texted|pressed, want these|them|the|my lashes|extensions|set|fans to|off|out|gone|for, stop ..
        asking if|how .. fine, stop .. tell me, stop with|w the
        emojis|smileys|smiley|jokes|small|pleasantries|questions|waffle, stop by
        after|before|around|tomorrow|later|on|at|with, dont bother|disturb me .. fine, dont bother me, doesnt bother
        me, not bother me, didnt bother me, not bothering me, doesnt|dont|didnt disturb me, not disturb me at all,
        back off .. spoolie|brush, dont want any more lashes|extensions|fallout|shedding, blocked
        nose|duct|gland|pore|sinus, block ducts, my stop, in peace .. sleep, want|need out of this|the
        pain|agony|itch|misery|torture|hell|burning, blocked you|u|ye by|accidentally|in|cos|because, youre|ur|you
        are? blocked in|by|from, thanks|thank|ta|cheers|thx|ty|appreciate you? for? the|your|ur|this|these|that
        lovely|kind|quick|nice? reminder|reminders|message|text|msg|email|heads, drop|bump|downgrade|move me from
        a|the|my? full|hybrid|volume|classic|set|mega|russian|c|d|14|12|13, can|could|will|would|please|pls
        you|u|ye? stop
        putting|giving|doing|making|using|charging|running|being|leaving|pulling|playing|rushing|taking|changing|moving|booking,
        out of|off the|your|ur diary|calendar|schedule|rota, texts|messages|texting|reminders and
        none|not|no|never|nobody .. sorry|answer|reply|answers|replies|help, didnt|never|havent|hasnt|dont
        get|got|receive|received|see|seen|have a|an|the|any|my|your|ur last|usual|aftercare?
        reminder|message|text|msg|email|confirmation|link, no reminder|message|text|msg|email
        came|arrived|yet|received|this, do|does|did|will|could|can you|u|ye|it send|text|remind|message|email out?
        reminders|reminder|texts|by|me?, texts|messages|msgs|emails|my|text|message isnt|arent|wont|not|didnt
        sending|send|working|going|delivering|deliver|through|arriving, let this|that be the last time i|we|you,
        take|get|have these|the|them|my lashes|lash|extensions off|out, dont|not <write> me
        until|til|till|before|while|when|after|im|ill|during|between, dont|not <write> me at work|night, will
        ring|call|text|message later|back|after|when|tomorrow, dont stop
        sending|texting|reminding|writing|messaging|emailing|these|the, do not stop
        sending|texting|reminding|writing|messaging|emailing, never stop sending|texting|reminding,
        unsubscribe|unsubscribed|unsubscribing|opt|opted|opting|quitting|cancelling|resign|resigning from|out|of of?
        sleep|work|mornings|monday|mondays|people|ageing|aging|housework|cooking|chores|gravity|family|adulthood|responsibility|winter|january|summer,
        rain|snow|storm|wind|sleet wont|hasnt|doesnt|didnt|never stop|stopped, till|until it stops, stop it i|im
        look|looks|am|feel|cant, just stop it i|im|these|they, dont you? dare|ever stop, dare you stop,
        take|took|cross|cancel|scratch me|us off for|on this|next?
        friday|monday|tuesday|wednesday|thursday|saturday|sunday|today|tomorrow,
        cancel|ignore|scrap|forget|disregard|delete that|my|the last? previous? text|message|msg|one,
        wont|doesnt|dont|not|never|wouldnt|refuses|refusing to? leave|leaves|leaving me alone|be, tickle|itch|pain
        .. leave me alone, opted|unsubscribed|stopped|signed out|off|them .. but
        would|id|i|want|like|now|changed|can, so getting|receiving these
        lumps|bumps|gaps|lashes|spots|headaches|styes|itches, get lost on|in|easily|finding, buzz off the|it,
        finally|just quit picking|rubbing|touching|smoking, name off ..
        slot|booking|appointment|appt|friday|monday|tuesday|wednesday|thursday|saturday|sunday|waitlist, no more ..
        volume|length|curl|classics|hybrids|spikes, stop them from|itching|falling|shedding|twisting, stop these
        from|falling|itching, how do you stop them, to stop them, can you stop them, help stop them, stop by, stop
        in, stop over, stop at, stop on, stop off, stopped by, cant stop, couldnt stop, cannot stop, wont stop,
        doesnt stop, dont stop, never stop, didnt stop, hasnt stopped, stop staring, stop looking, stop itching,
        stop burning, stop watering, stop crying, stop rubbing, stop scratching, stop bleeding, stop the
        itching|burning|swelling|redness|watering|pain|itch, bus stop, truck stop, pit stop, non stop, nonstop, one
        stop, full stop, traffic stop, stop sign, stop the presses, stop working, stopped working, stop wearing,
        stop using, stop coming to, stop falling, stop shedding, stop it you, oh stop it, stop it ..
        gorgeous|obsessed|love|cute|pretty|perfect, stop im, stop theyre, stop these, stop they, omg stop, stop omg,
        stop .. crying, stop people, people stop, stop me in,
        he|she|they|himself|herself|hubby|husband|wife|boyfriend|girlfriend|mum|mam|mom|dad|sister|brother|friend|friends|mates|everyone|everybody|people|colleagues|kids|son|daughter|nan|fella|boss|men|lads|strangers
        wont|cant|couldnt|doesnt|hasnt|didnt|never|keeps|wouldnt stop|stops|stopped|quit
        calling|texting|asking|telling|saying|messaging|sending|ringing|writing|pestering|bothering|bugging|emailing|complimenting
        me|us|him|her?, cut|cuts|cutting|kicked|dropped|dropping|knocked me|us off mid|halfway|during|before,
        phone|line|signal|wifi|battery|call .. cut|cuts|kicked|dropped|knocked me|us off ..
        text|call|message|sentence|msg?, cut me off .. text|call|message|sentence,
        take|took|cross|cancel|scratch|put|bump|swap|drop|remove|knock me|us|my off|from the|this|on|for?
        <day>|1|2|3|4|5|6|7|8|9|10|11|12|1pm|2pm|3pm|4pm|5pm|6pm|7pm|9am|10am|11am|noon|morning|afternoon|evening|slot,
        remove|take|drop|delete|scratch|cross|pull me|us|my|name off|from|out of? the|your|ur
        waiting|wait|waitlist|cancellation|cancellations|standby|short|saturday|sunday|friday, no more <lifething>,
        quit|quitting|done|through|finished|over|ditched|ditching|binned|bye|goodbye|unsubscribed|unsubscribing|unsubscribe|opt|opted|opting|resign|resigning
        with|to|from|out|the|my? of? <lifething>, no more strip|false|fake|messy|clumpy|magnetic|cluster
        lashes|lash|mascara, no|without need|reason|call|cause|want to|for
        stop|stopping|end|ending|cancel|cancelling the|your|these|those|my texts|messages|reminders|it|msgs|them,
        keep the|your|those|them|these|my texts|messages|reminders|msgs|it? coming|going|up|flowing, keep
        them|these|those|it coming|up|flowing, dont|please dont|not|never ever? stop|quit
        sending|texting|reminding|messaging|checking|writing|these|this|them|those|it, didnt|never|not|dont
        mean|meant|want|wanted|wanting|intend|trying|meaning to opt|stop|unsubscribe|text|quit|end|leave|block
        out|stop|it|them|the|in|you?, pressed|hit|sent|typed|clicked|texted|put|wrote|tapped stop ..
        accident|mistake|error|wrongly|accidentally|meaning|error, dont|never|cant|wont|rarely|hardly|didnt
        see|get|check|read texts|text|messages|msgs|emails|sms|notifications ..
        at|on|until|during|when|while|here|work|so|in, rather than|by|via a?
        text|sms|phone|texting|call|texts|email|post, instead of a?
        text|texts|sms|texting|calling|call|emailing|email|phone, text|message|email|call|ring|send|contact|whatsapp
        me|us|it|them|reminders|my|the reminders? on|by|via|to|at ..
        email|hotmail|gmail|whatsapp|mail|wife|husband|new|other|work|mobile|landline, email me rather|instead|not,
        call me instead|rather, drop me a|an text|line|message|email|note|msg|quick, be|been|get|have|getting?
        taken|removed|deleted|wiped|struck|crossed off|from|out of? my|the
        notes|file|record|card|chart|form|bill|tab|total|invoice|records|booking, can|could|would|will|did|does
        you|u|ye|it|that|this stop|stopped|prevent the|my|a|that|one|this
        left|right|one|lash|lashes|eye|glue|ends|itch|corner|inner|outer|top|bottom|itching|poking|fans|other, stop
        the|my|this|that|one|left|right ..
        poking|twisting|falling|crossing|itching|watering|burning|stinging|loosening|shedding|clumping|sticking|curling,
        out of the house|office|car|bed|way|here|work|city|shower|meeting,
        get|got|see|saw|read|receive|received|find my|the|this? message|text|email|photo|pic|msg|voicemail,
        take|taken|get|getting|taking|want|wanted|remove|removing|need them|these|em all? off|out|removed, i
        want|need them|these off|out, reminders|texts|messages|check|texting is|are|were|was so? really?
        great|lovely|handy|useful|helpful|brilliant|appreciated|nice|kind|good|fab, love|like|appreciate|enjoy that?
        you|the|your|how|these text|texts|message|messages|check|reminders|reminder|remind, blocked|blocks|block
        your|the|that link|website|page|number|photo|road|street|drive|drain|sink|nose|by, stopped me, stop traffic,
        stop lol, lol stop, stop losing, stop them from|falling|twisting|coming, stop it from, how do i stop, how to
        stop, what can stop, stop blinking, stop being so, stop smiling, stop touching, stop playing, stop taking
        selfies|pics|photos, stop dead, stop posting, stop sleeping, stop at nothing, put a stop, last stop, the
        stop, next stop, train stop, stops, at 6am, before 9, after 9 is, this early, so early, so late, late at
        night, at night, in the middle of, at midnight, at 7am, at 5am, before noon, before 8am, before 10, during
        work, at work hours, remove them, remove the, remove my lashes, remove these, take them off, take my lashes
        off, take these off, get them off, get these off, end of, ends, the end, in the end, quit my job, quit
        smoking, quit the, quit work, quit being, quit it youre, cancel
        my|the|today|tomorrow|our|friday|thursday|monday|tuesday|wednesday|saturday|sunday|fridays|thursdays ..
        appointment|appt|fill, dont text back .. busy, no more of this|the|that
        hurting|pain|itching|itch|burning|stinging|agony|swelling|soreness|watering, cant|cannot|couldnt
        take|stand|bear no|any more
    """,
    "start": """
        start texting|messaging|sending me? again, want .. texts|messages|reminders back, resume ..
        texts|messages|msgs|reminders|texting|messaging|sending|emails, restart .. texts|messages|reminders, put me
        back on .. texts|messages|reminders|msgs, me back on, back on your texts|messages|list, sign me up again,
        start .. texts|messages|reminders|texting|messaging again, start sending them again, get ..
        texts|messages|reminders again, stopped them by accident|mistake, unsubscribed by accident|mistake, opted
        out by accident|mistake, hit|pressed|sent|texted|typed|replied|tapped|clicked stop by accident|mistake, keep
        texting|sending|messaging|reminding|msging me|them|us, undo the|that stop|unsubscribe|opt,
        pop|put|add|stick|sign|whack|get|bung|pencil me back in|on|onto|into|up ..
        list|texts|club|reminders|messages|loop|system, like|want|wish|love .. receive|get texts|messages|reminders
        once|again|back, wish|want|like to receive .. once more|again, want|like back on|in|into the|your|ur ..
        list|texts|reminders|messages|loop, like|want|love|have the|my|your texts|messages|reminders again|back,
        didnt mean to stop|unsubscribe, send .. texts|messages|reminders again, can i get .. texts|messages again,
        miss getting .. texts|messages|reminders, start sending|texting|messaging again, sign me back up, text me
        again, resubscribe, re subscribe, subscribe me, opt in, opt me in, opt back in, start again please, start
        texts, turn .. texts|messages|reminders back on, put me back on .. list, add me back, start the
        texts|messages, want .. texts|messages|reminders again, didnt|never mean|meant to
        opt|stop|unsubscribe|text|quit|leave .. again|back|up|in, undo|reverse|cancel the|my|that
        stop|unsubscribe|optout, get|getting|have|put me|them|texts|reminders|messages .. again|back please|pls,
        pressed|hit|sent|typed|clicked stop .. accident|mistake .. back|again|on, keep|keep the|your
        messages|texts|reminders coming
    """,
    "deceased": """
        <kin> .. passed|died|departed away|on|suddenly|peacefully|last|in, <kin> has|sadly|just|recently?
        died|deceased|expired, <kin> has|is passed|deceased|expired away|on?, he|she has|is|was? deceased|expired,
        he|she|hes|shes dead love|now|so|sorry|please|and|pet, he|she passed|died away|on|last|in|suddenly, we|i
        buried .. <kin>|her|him, buried .. on|last|in, <kin> .. care|nursing|hospice|retirement home, in a
        care|nursing home and
    """,
    "wrong_person": """
        who tf is|are, who the|on|even hell|heck|fuck|earth|tf is|are, number no more its mine|my, number is|its
        mine|my|ours now, got|have|inherited her|his|their|this old? number now|off|from|last|when, dont|doesnt|not
        have|use|own this number|phone|sim no|any|anymore, you|u|ye|youve|uve
        got|have|reached|texted|rang|messaged|found a|an retired|old|elderly|random|total|complete|different,
        think|believe|reckon|say im|my called|named|name, think you want|need|wanted somebody|someone else, this is
        .. the plumber|builder|electrician|gasman|postman|mechanic, i run a tyre|tire|repair|barber|pizza|flower
        shop|garage|place, check your list|lists|records, im not michelle, is my ex wife, no idea what|who this
        is|are, have no appointment with you|yous|ye|u, never had a lash in, at|on this number sorry|love|mate|pal,
        no .. at|on this number, mixed up with a|another|someone, number mixed up, her|his
        husbands|wifes|mums|dads|sons|daughters phone|number|mobile, husbands|wifes phone, wrong
        bloke|fella|lad|lady|girl|guy|woman|man|gal|chap|house|family, youve got? the wrong, the
        girl|lady|woman|person|one who|that had this number before, had this number before, only have|had|got this
        number since|from|for, have this number since|only, have only this number, never been|was in|to a?
        lash|salon|beauty, never in lash, number is new, new owner of, i dont do lashes, dont wear .. lashes, not a
        lash client|customer|person|salon|studio|wearer|girl|place, isnt my number, nobody here, no such person, she
        doesnt live, she no longer, not her phone, not his phone, this was her|his number, wrong no, wrong inbox,
        wrong mary|maria|anna|sarah, i am a plumber|man|mechanic|builder|pensioner, im a
        plumber|mechanic|builder|pensioner|grandad|granddad, nobody of that name, no one of that name, no clue who,
        no idea who .. is, different number, wrong chat, i am not miss|mrs|mr|ms, im not miss|mrs|mr|ms, she left
        this line, had this number about|since|for, my twin .. shes the one, ya no tiene este
        cel|celular|numero|telefono, <be>? her|his
        husband|wife|mum|mom|mother|partner|boyfriend|girlfriend|son|daughter she|he .. number, no longer
        has|have|uses|owns|got|at|on|using this|that phone|number|mobile|line|cell|device, no lashes
        here|round|at|on, whoever booked .. wasnt|isnt|not, is her|his|my phone she|he|whoever, gave
        you|u|ye|yous|them my number|# .. joke|prank|laugh|mistake|accident, gave u my #, wrong
        girl|bloke|fella|gal|chick|dude, she|he changed her|his|their number, changed her|his number, has a new
        number now, no longer her|his number, this number is not hers|his, isnt her|his number anymore, dont know
        anyone called|named, nobody called|named, no one here called|named|by, there is no .. on|at|here|in, theres
        no .. here|at|on, meant to text, meant to message, meant for, old number, got this phone|number
        in|last|from|a, i got this phone|number, landline, please check your contact{s/}, check your
        records|contacts, not denise|jessica|tasha|her|him|sarah|maria, this isnt .., sorry this is ..
        phone|mobile|number, your|youre|you are? texting|messaging|contacting|emailing|calling|phoning|ringing
        a|an|the
        tattoo|barber|pizza|dental|dentist|flower|tyre|butcher|garage|school|church|pub|hospital|clinic|plumber|business|company|stranger|bloke|man|guy|wrong|random|kebab|chip|coffee
        shop|office|salon|surgery|place|number|person?, i am|not im|not|am? not? not <name>, im not <name>, not
        <name> never|im|its|sorry|wrong|this, isnt <name>, this is not <name>, who
        the|tf|on|in|is|heck|hell|fuck|earth? hell|heck|earth|fuck|is? is|earth? <name>, who is|was <name>, who tf
        is, who the hell|heck|fuck is, <name> no longer|doesnt|dont|isnt|moved|left|changed, no <name>
        here|at|on|lives|living|round, never have been <name>?, texting me as if i, bought|got this|the|a
        sim|phone|number|handset last|this|on|from|second|used, some womans|girls|ladys|strangers|elses
        lash|appointment|reminders|texts|messages, her|his ex here, he|she changed|switched|lost her|his?
        numbers|number|phone|phones, dont|doesnt|no live|stay here no|any? more?|anymore, her|his|their number
        is|ends .. in|with, this is|its her|his|their
        husband|wife|partner|boyfriend|girlfriend|dad|son|brother|sister|ex|boss|flatmate, thats my
        daughter|wife|sister|mum|mom youre|you|ur after|want|mean|looking, work phone .. stop, stuff to me, used to
        be .. number|phone|mobile|cell|line, this was .. number|phone|mobile|line, not the number for|of, isnt the
        number for|of, not .. number anymore, not who you think|want|mean|need, this|the sim|number came|is|was
        new|from|reassigned, fresh|secondhand sim, my? wifes|sisters|daughters|mums|moms|girlfriends the one with
        the? lashes|you|appointment|extensions, wife|sister|daughter|mum|mom|girlfriend is the one with the?
        lashes|you|appointment|extensions, think|reckon you want|need|mean the other, wrong
        mobile|cell|phone|line|digits|recipient, got the wrong mobile|cell|phone|line|digits, with a
        beard|moustache|mustache, bearded|bald bloke|man|guy|fella, you must have|mean someone|somebody else, this
        is not .. phone|number, this is a landline|office|business|school|hospital|restaurant, unit phone, never
        heard of this|your|the, no idea who, dont have an appointment with you, never been a customer|client, im
        70|60|50 .. man, using her phone, wrong number, wrong person, wrong num, wrong #, wrong phone, wrong nbr,
        wrong email, wrong address, wrong gal, wrong girl, wrong lady, who is this, whos this, who dis, who this,
        who are you, who r u, who is dis, new number who, i think you have the wrong, you have the wrong, u have the
        wrong, you got the wrong, u got the wrong, youve got the wrong, not my number, this isnt .. phone|number,
        this isnt her|him|them|me, not her number, no one here by, no one by that, nobody by that, noone by that, no
        .. here by that name, never been to, never had lashes, never been there, dont have lashes, dont wear lashes,
        dont know you, i dont know who, dont know who you, dont know any, |jessica|maria|sarah|ashley, not the
        person, wrong contact, mistaken identity, mistaken, meant for someone, for someone else, meant for my,
        intended for, previous owner, had this number for, just got this number, this number belongs, belongs to, im
        a man, i am a man, im a guy, im a dude, im a bloke, old owner, changed number, you mean someone, dont know
        a, do not know you, not a client, never booked, never heard of you, not me, isnt me, got wrong number,
        nobody called, no one called, noone called, fake number, gave you a fake, gave you the wrong, aint her|him,
        do not know anyone, dont know anyone, by that name, want my wife|mum|mom|sister|daughter, this is .. not,
        work phone, work number, no .. here, company phone, not my wife|mum|mom
    """,
    "notquestion": """
        what can i say, what more|else can i say, do|did you|u|ya know i|what|that, guess what, you know what, who
        knew, tell me why, doing what you|u|ye do, can i just say, do i look bothered, what do i know, where do i
        start, how do i put, how about that
    """,
    "auto": """
        sent from my, sent from outlook|mail|yahoo|samsung, get outlook for, out of office, out of the office,
        automatic reply, auto reply, autoreply, auto response, automated reply|response|message, annual leave, on
        leave, maternity leave, on vacation until, until further notice, limited access to email, currently driving,
        im driving, driving with focus|do, do not disturb, will reply when, get back to you, ill get back, cant talk
        right now, cant talk now, busy right now, in a meeting, landline text service, is a landline text, text to
        landline, emails are not being, not monitored, undeliverable, delivery failed, this mailbox, ooo, i am away,
        i will be away, im away from, away from my desk, return on, returning on, on holiday until, call you later,
        ill call you
    """,
    "spam": """
        you have been selected, gift voucher, tap the link, gift card .. claim, claim before, salons like yours,
        more clients a month, new clients a month, congratulations you, you won, youve won, gift card, click here,
        click the link, click this, crypto, bitcoin, loan, seo, free trial, claim your, limited offer, your package,
        parcel, your account, verify your, interest rate, earn money, work from home, backlinks, followers, winner,
        investment, pre approved, verification code, your code is, otp
    """,
    "photo": """
        photo, image, picture, pic, attachment, img, video, sent a photo, sent an attachment, sent a picture, mms,
        sent an image, audio, voice message, sticker, gif, liked a, loved an, file, laughed at, emphasized
    """,
    "yes": """
        yes, yep, yeah, ye, yh, yus, ja, yea, yup, ya, y, yess, yesss, yas, yass, aye, si, ok, okay, k, kk, sure,
        correct, affirmative, mhm, uh huh, maybe, kind of, sort of, sorta, kinda, a bit, a little, little bit, i do,
        they are, it is, some, a few, all of them, most, definitely
    """,
    "no": """
        no, nope, nah, nop, n, naw, none, negative, nothing, not really, not at all, no maam, no mam, neither,
        never, nada, zero, zilch, nil, noo, nooo, no no, nuh uh, not yet
    """,
    "please": """
        please, pls, plz, thanks, thank, you, ty, hi, hello, hey, just, so, far, maam, dear, love, hun, babe, lol,
        haha, x, xx, xxx, there, oh, hiya, good, morning, afternoon, evening
    """,
}
