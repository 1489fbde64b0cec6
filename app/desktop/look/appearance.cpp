// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/appearance.h"

#include "app/desktop/look/preferences.h"
#include "app/desktop/look/theme.h"

#include <QApplication>
#include <QFont>
#include <QLibraryInfo>
#include <QTranslator>

/// Outside of every namespace, as Qt's macro wants it.
static void initTranslations()
{
    Q_INIT_RESOURCE(bothways_translations);
}

namespace bothways::app {
namespace {

constexpr double kLarger = 1.35;

/// Words of Qt's own that the window shows: ours say them where Qt's translations are not
/// installed.
[[maybe_unused]] constexpr const char* kWordsOfQt[] = {
    QT_TRANSLATE_NOOP("QPlatformTheme", "OK"),    QT_TRANSLATE_NOOP("QPlatformTheme", "Cancel"),
    QT_TRANSLATE_NOOP("QPlatformTheme", "Close"), QT_TRANSLATE_NOOP("QShortcut", "Alt"),
    QT_TRANSLATE_NOOP("QShortcut", "Ctrl"),       QT_TRANSLATE_NOOP("QShortcut", "Del"),
    QT_TRANSLATE_NOOP("QShortcut", "Ins"),        QT_TRANSLATE_NOOP("QShortcut", "Return"),
    QT_TRANSLATE_NOOP("QShortcut", "Shift"),
};

void apply(QApplication& application, const Preferences& preferences, const QFont& usual)
{
    switch (preferences.theme()) {
    case ThemeChoice::system: QApplication::setPalette(QPalette()); break;
    case ThemeChoice::light: QApplication::setPalette(Theme::light().palette()); break;
    case ThemeChoice::dark: QApplication::setPalette(Theme::night().palette()); break;
    }
    QFont font = usual;
    if (preferences.largeText())
        font.setPointSizeF(usual.pointSizeF() * kLarger);
    if (application.font() != font)
        QApplication::setFont(font);
}

} // namespace

void followAppearance(QApplication& application, Preferences& preferences)
{
    const QFont usual = application.font();
    const auto applyNow = [&application, &preferences, usual] {
        apply(application, preferences, usual);
    };
    applyNow();
    QObject::connect(&preferences, &Preferences::appearanceChanged, &application, applyNow);
}

void installTranslation(QApplication& application, const Preferences& preferences)
{
    initTranslations();
    // Another language leaves the country, and with it the usual units, as they are.
    if (!preferences.language().isEmpty())
        QLocale::setDefault(
            QLocale(QLocale(preferences.language()).language(), QLocale::system().territory()));
    // English has its plurals from a translation; it also stands in where a language has none.
    for (const QLocale& locale : {QLocale(QLocale::English), QLocale()}) {
        auto* ours = new QTranslator(&application);
        if (ours->load(locale, "bothways", "_", ":/translations"))
            QApplication::installTranslator(ours);
        auto* qts = new QTranslator(&application);
        if (qts->load(locale, "qtbase", "_", QLibraryInfo::path(QLibraryInfo::TranslationsPath)))
            QApplication::installTranslator(qts);
    }
}

} // namespace bothways::app
