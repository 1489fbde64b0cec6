// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/appearance.h"
#include "app/desktop/look/preferences.h"

#include <QApplication>
#include <QLocale>
#include <QTranslator>

namespace bothways::app::tests {

/// Speaks German until its end.
class German {
public:
    explicit German(Preferences& preferences)
    {
        preferences.setLanguage("de");
        installTranslation(*application(), preferences);
    }
    ~German()
    {
        for (QTranslator* translator : application()->findChildren<QTranslator*>())
            if (!m_before.contains(translator))
                delete translator;
        QLocale::setDefault(m_locale);
    }
    German(const German&) = delete;
    German& operator=(const German&) = delete;
    German(German&&) = delete;
    German& operator=(German&&) = delete;

private:
    static QApplication* application()
    {
        return qobject_cast<QApplication*>(QCoreApplication::instance());
    }
    QLocale m_locale;
    QList<QTranslator*> m_before = application()->findChildren<QTranslator*>();
};

} // namespace bothways::app::tests
