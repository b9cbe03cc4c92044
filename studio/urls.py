"""Every route: the studio's own here, what follows from its visits in aftercare."""

from django.contrib.auth.views import LogoutView
from django.urls import include, path

from studio.views.home import home, look
from studio.views.sign_in import ChangePassword, SignIn, choose_language, choose_studio

handler404 = "studio.views.home.not_found"
urlpatterns = [
    path("", home, name="home"),
    path("sign-in", SignIn.as_view(), name="sign_in"),
    path("sign-out", LogoutView.as_view(), name="sign_out"),
    path("password", ChangePassword.as_view(), name="password"),
    path("choose-studio", choose_studio, name="choose_studio"),
    path("choose-language", choose_language, name="choose_language"),
    path("look", look, name="look"),
    path("", include("studio.urls_settings")),
    path("", include("aftercare.urls")),
]
