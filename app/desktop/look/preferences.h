// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/units_shown.h"

#include <QByteArray>
#include <QObject>
#include <QStringList>

#include <memory>

class QSettings;

namespace bothways::app {

enum class ThemeChoice { system, light, dark };

/// The user's choices, kept from one start to the next. Each has one key and one default, both in
/// preferences.cpp; units not yet chosen are those of the locale's country. What belongs to a study
/// is in the study.
///
/// Handed to whoever needs it: there is no global one. Tests start from a file of their own.
class Preferences final : public QObject {
    Q_OBJECT

public:
    /// The user's own.
    explicit Preferences(QObject* parent = nullptr);
    /// Those of one file (INI).
    explicit Preferences(const QString& file, QObject* parent = nullptr);
    ~Preferences() override;

    /// How numbers are shown. `electric` is the study's to say.
    [[nodiscard]] UnitsShown units(bool electric = false) const;
    /// In which the window speaks, with the locale's numbers: that of the texts that are installed.
    /// Another language() holds from the next start on.
    [[nodiscard]] Language spoken() const;

    [[nodiscard]] core::ConsumptionUnit consumptionUnit() const;
    void setConsumptionUnit(core::ConsumptionUnit unit);
    /// What the dashboard shows and the entry panel takes; may be an amount of fuel.
    [[nodiscard]] core::ConsumptionUnit entryUnit() const;
    void setEntryUnit(core::ConsumptionUnit unit);
    [[nodiscard]] DistanceUnit distanceUnit() const;
    void setDistanceUnit(DistanceUnit unit);
    [[nodiscard]] TemperatureUnit temperatureUnit() const;
    void setTemperatureUnit(TemperatureUnit unit);
    [[nodiscard]] ThemeChoice theme() const;
    void setTheme(ThemeChoice theme);
    /// Of the roadside mode alone; `system`: as the program.
    [[nodiscard]] ThemeChoice roadsideTheme() const;
    void setRoadsideTheme(ThemeChoice theme);
    /// Of the alarms of a recording, 0 (silent) to 100.
    [[nodiscard]] int alarmVolume() const;
    void setAlarmVolume(int volume_pct);
    /// Channels that were chosen to be seen while recording, in their order.
    [[nodiscard]] QStringList watchedChannels() const;
    void setWatchedChannels(const QStringList& channels);
    /// With which the last recording was made; empty: none yet.
    [[nodiscard]] QString lastRig() const;
    void setLastRig(const QString& name);
    /// The user's list of the walk-round, as core::walkText() has it: for the next study.
    [[nodiscard]] QString walkRound() const;
    void setWalkRound(const QString& list);
    [[nodiscard]] bool largeText() const;
    void setLargeText(bool large);
    /// "de", "en", ...; empty: the system's.
    [[nodiscard]] QString language() const;
    void setLanguage(const QString& language);
    [[nodiscard]] bool moreFields() const; ///< the entry panel shows all fields
    void setMoreFields(bool more);

    /// Newest first, at most ten; files that are gone are left out.
    [[nodiscard]] QStringList recentFiles() const;
    void addRecentFile(const QString& file);
    /// Where a file was last chosen; empty: nowhere yet, or it is gone.
    [[nodiscard]] QString lastFolder() const;
    void setLastFolder(const QString& folder);
    /// What was open when the session ended, or the program was told to end; given once. Empty:
    /// nothing, or it is gone.
    [[nodiscard]] QString takeInterruptedStudy();
    void setInterruptedStudy(const QString& file);
    void forgetInterruptedStudy(const QString& file); ///< another one stays
    [[nodiscard]] QByteArray windowGeometry() const;
    [[nodiscard]] QByteArray windowState() const;
    void setWindow(const QByteArray& geometry, const QByteArray& state);

    /// What was under way at the roadside with this study; empty: nothing. On disk when set.
    [[nodiscard]] QByteArray roadsideDraft(const QString& study) const;
    void setRoadsideDraft(const QString& study, const QByteArray& draft);
    /// The same of a run that is being typed into the form.
    [[nodiscard]] QByteArray formDraft(const QString& study) const;
    void setFormDraft(const QString& study, const QByteArray& draft);

signals:
    void unitsChanged();
    void appearanceChanged(); ///< theme or size of text
    void recentFilesChanged();

private:
    void setDraft(const QString& key, const QByteArray& draft);
    template <class T>
    T read(const struct Setting& setting) const;
    bool write(const struct Setting& setting, const QVariant& value);

    std::unique_ptr<QSettings> m_settings;
};

} // namespace bothways::app
