"""Words that tell of the past and of now, in both languages."""

from __future__ import annotations

from aftercare.core.reading.tokens import listed

PAST_WORDS = listed("""
    twas wept estuvieron estuvo amanecieron quedaron lagrimeo lagrimee dejaron dejo was were lasted had got did went swelled couldnt ended came gave took turned broke felt looked tuve tenia estaba
    fue se hincharon hincho dio pico ardio salio started hurt made needed lost estuve ardian picaban ardieron
    picaron dolieron lloraron rang phoned moaned
""")
PRESENT_WORDS = listed("""
    is are am im now today its theyre hoy ahora estoy esta estan tengo feels still
""")
