// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/preferences.h"

#include <QCryptographicHash>
#include <QFileInfo>
#include <QSettings>

#include <algorithm>
#include <iterator>

namespace bothways::app {

/// A choice: where it is kept, and what holds until it is made.
struct Setting {
    const char* key;
    QVariant (*byDefault)();
};

namespace {

using core::ConsumptionUnit;

constexpr int kMostRecentFiles = 10;

QString nameOf(ConsumptionUnit unit)
{
    const std::string_view name = core::unitName(unit);
    return QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
}

QLocale::MeasurementSystem measures()
{
    return QLocale().measurementSystem();
}

QVariant usualConsumptionUnit()
{
    switch (measures()) {
    case QLocale::ImperialUSSystem: return nameOf(ConsumptionUnit::mpgUs);
    case QLocale::ImperialUKSystem: return nameOf(ConsumptionUnit::mpgImp);
    default: return nameOf(ConsumptionUnit::lPer100km);
    }
}

QVariant usualDistanceUnit()
{
    return measures() == QLocale::MetricSystem ? "km" : "mi";
}

QVariant usualTemperatureUnit()
{
    return measures() == QLocale::ImperialUSSystem ? "F" : "C";
}

// Every setting, once.
constexpr Setting kConsumptionUnit{"units/consumption", usualConsumptionUnit};
constexpr Setting kEntryUnit{"units/entry", [] { return QVariant(QString()); }};
constexpr Setting kDistanceUnit{"units/distance", usualDistanceUnit};
constexpr Setting kTemperatureUnit{"units/temperature", usualTemperatureUnit};
constexpr Setting kTheme{"window/theme", [] { return QVariant("system"); }};
constexpr Setting kRoadsideTheme{"roadside/theme", [] { return QVariant("system"); }};
constexpr Setting kAlarmVolume{"live/alarm_volume", [] { return QVariant(80); }};
constexpr Setting kWatchedChannels{"live/channels", [] { return QVariant(QStringList()); }};
constexpr Setting kWalkRound{"walk_round", [] { return QVariant(QString()); }};
constexpr Setting kLastRig{"live/rig", [] { return QVariant(QString()); }};
constexpr Setting kLastFolder{"session/folder", [] { return QVariant(QString()); }};
constexpr Setting kLargeText{"window/large_text", [] { return QVariant(false); }};
constexpr Setting kLanguage{"window/language", [] { return QVariant(QString()); }};
constexpr Setting kMoreFields{"entry/more_fields", [] { return QVariant(false); }};
constexpr Setting kRecentFiles{"session/recent_files", [] { return QVariant(QStringList()); }};
constexpr Setting kGeometry{"session/geometry", [] { return QVariant(QByteArray()); }};
constexpr Setting kWindowState{"session/window_state", [] { return QVariant(QByteArray()); }};

ConsumptionUnit unitOf(const QString& name, ConsumptionUnit otherwise)
{
    return core::unitFromName(name.toStdString()).value_or(otherwise);
}

constexpr const char* kInterrupted = "session/interrupted_study";

/// A key of its own for each study's file.
constexpr const char* kRoadside = "roadside";
constexpr const char* kForm = "form";

/// Where something unfinished of a study is kept; `kind` of work.
QString draftKey(const QString& kind, const QString& study)
{
    const QByteArray path = QFileInfo(study).absoluteFilePath().toUtf8();
    const QByteArray hash = QCryptographicHash::hash(path, QCryptographicHash::Sha256).toHex();
    return kind + u'/' + QString::fromLatin1(hash.left(16));
}

ThemeChoice themeOf(const QString& name)
{
    if (name == "light")
        return ThemeChoice::light;
    return name == "dark" ? ThemeChoice::dark : ThemeChoice::system;
}

QString nameOf(ThemeChoice theme)
{
    static constexpr const char* kNames[] = {"system", "light", "dark"};
    return kNames[static_cast<int>(theme)];
}

} // namespace

Preferences::Preferences(QObject* parent)
    : QObject(parent), m_settings(std::make_unique<QSettings>())
{
}

Preferences::Preferences(const QString& file, QObject* parent)
    : QObject(parent), m_settings(std::make_unique<QSettings>(file, QSettings::IniFormat))
{
}

Preferences::~Preferences() = default;

template <class T>
T Preferences::read(const Setting& setting) const
{
    return m_settings->value(QLatin1String(setting.key), setting.byDefault()).template value<T>();
}

bool Preferences::write(const Setting& setting, const QVariant& value)
{
    const QLatin1String key(setting.key);
    if (m_settings->value(key, setting.byDefault()) == value)
        return false;
    m_settings->setValue(key, value);
    return true;
}

UnitsShown Preferences::units(bool electric) const
{
    UnitsShown units;
    units.consumption = consumptionUnit();
    units.distance = distanceUnit();
    units.temperature = temperatureUnit();
    units.electric = electric;
    units.locale = QLocale();
    units.locale.setNumberOptions(QLocale::OmitGroupSeparator);
    units.language = spoken();
    return units;
}

Language Preferences::spoken() const
{
    //: not a word: the tag of the language that these texts are in, like de
    const QString tag = tr("en", "language of these texts");
    Language language = Language::named(tag.toStdString()).value_or(Language());
    const QLocale locale;
    language.setNumbers(
        {locale.decimalPoint().toStdString(), locale.groupSeparator().toStdString()});
    return language;
}

ConsumptionUnit Preferences::consumptionUnit() const
{
    const auto unit = unitOf(read<QString>(kConsumptionUnit), ConsumptionUnit::lPer100km);
    return core::needsDistance(unit) ? ConsumptionUnit::lPer100km : unit;
}

void Preferences::setConsumptionUnit(ConsumptionUnit unit)
{
    if (write(kConsumptionUnit, nameOf(unit)))
        emit unitsChanged();
}

ConsumptionUnit Preferences::entryUnit() const
{
    return unitOf(read<QString>(kEntryUnit), consumptionUnit());
}

void Preferences::setEntryUnit(ConsumptionUnit unit)
{
    if (write(kEntryUnit, nameOf(unit)))
        emit unitsChanged();
}

DistanceUnit Preferences::distanceUnit() const
{
    return read<QString>(kDistanceUnit) == "mi" ? DistanceUnit::miles : DistanceUnit::km;
}

void Preferences::setDistanceUnit(DistanceUnit unit)
{
    if (write(kDistanceUnit, unit == DistanceUnit::miles ? "mi" : "km"))
        emit unitsChanged();
}

TemperatureUnit Preferences::temperatureUnit() const
{
    return read<QString>(kTemperatureUnit) == "F" ? TemperatureUnit::fahrenheit
                                                  : TemperatureUnit::celsius;
}

void Preferences::setTemperatureUnit(TemperatureUnit unit)
{
    if (write(kTemperatureUnit, unit == TemperatureUnit::fahrenheit ? "F" : "C"))
        emit unitsChanged();
}

ThemeChoice Preferences::theme() const
{
    return themeOf(read<QString>(kTheme));
}

void Preferences::setTheme(ThemeChoice theme)
{
    if (write(kTheme, nameOf(theme)))
        emit appearanceChanged();
}

ThemeChoice Preferences::roadsideTheme() const
{
    return themeOf(read<QString>(kRoadsideTheme));
}

void Preferences::setRoadsideTheme(ThemeChoice theme)
{
    write(kRoadsideTheme, nameOf(theme));
}

int Preferences::alarmVolume() const
{
    return std::clamp(read<int>(kAlarmVolume), 0, 100);
}

void Preferences::setAlarmVolume(int volume_pct)
{
    write(kAlarmVolume, volume_pct);
}

QStringList Preferences::watchedChannels() const
{
    return read<QStringList>(kWatchedChannels);
}

void Preferences::setWatchedChannels(const QStringList& channels)
{
    write(kWatchedChannels, channels);
}

QString Preferences::lastRig() const
{
    return read<QString>(kLastRig);
}

void Preferences::setLastRig(const QString& name)
{
    write(kLastRig, name);
}

QString Preferences::walkRound() const
{
    return read<QString>(kWalkRound);
}

void Preferences::setWalkRound(const QString& list)
{
    write(kWalkRound, list);
}

QString Preferences::lastFolder() const
{
    const QString folder = read<QString>(kLastFolder);
    return QFileInfo(folder).isDir() ? folder : QString();
}

void Preferences::setLastFolder(const QString& folder)
{
    write(kLastFolder, folder);
}

bool Preferences::largeText() const
{
    return read<bool>(kLargeText);
}

void Preferences::setLargeText(bool large)
{
    if (write(kLargeText, large))
        emit appearanceChanged();
}

QString Preferences::language() const
{
    return read<QString>(kLanguage);
}

void Preferences::setLanguage(const QString& language)
{
    write(kLanguage, language);
}

bool Preferences::moreFields() const
{
    return read<bool>(kMoreFields);
}

void Preferences::setMoreFields(bool more)
{
    write(kMoreFields, more);
}

QStringList Preferences::recentFiles() const
{
    QStringList files = read<QStringList>(kRecentFiles);
    files.removeIf([](const QString& file) { return !QFileInfo::exists(file); });
    return files;
}

void Preferences::addRecentFile(const QString& file)
{
    const QString path = QFileInfo(file).absoluteFilePath();
    QStringList files = read<QStringList>(kRecentFiles);
    files.removeAll(path);
    files.prepend(path);
    if (write(kRecentFiles, QStringList(files.mid(0, kMostRecentFiles))))
        emit recentFilesChanged();
}

QString Preferences::takeInterruptedStudy()
{
    const QString file = m_settings->value(kInterrupted).toString();
    setDraft(kInterrupted, {});
    return QFileInfo(file).isFile() ? file : QString();
}

void Preferences::setInterruptedStudy(const QString& file)
{
    setDraft(kInterrupted, QFileInfo(file).absoluteFilePath().toUtf8());
}

void Preferences::forgetInterruptedStudy(const QString& file)
{
    if (m_settings->value(kInterrupted).toString() == QFileInfo(file).absoluteFilePath())
        setDraft(kInterrupted, {});
}

QByteArray Preferences::windowGeometry() const
{
    return read<QByteArray>(kGeometry);
}

QByteArray Preferences::windowState() const
{
    return read<QByteArray>(kWindowState);
}

void Preferences::setWindow(const QByteArray& geometry, const QByteArray& state)
{
    write(kGeometry, geometry);
    write(kWindowState, state);
}

QByteArray Preferences::roadsideDraft(const QString& study) const
{
    return m_settings->value(draftKey(kRoadside, study)).toByteArray();
}

void Preferences::setRoadsideDraft(const QString& study, const QByteArray& draft)
{
    setDraft(draftKey(kRoadside, study), draft);
}

QByteArray Preferences::formDraft(const QString& study) const
{
    return m_settings->value(draftKey(kForm, study)).toByteArray();
}

void Preferences::setFormDraft(const QString& study, const QByteArray& draft)
{
    setDraft(draftKey(kForm, study), draft);
}

void Preferences::setDraft(const QString& key, const QByteArray& draft)
{
    if (draft == m_settings->value(key).toByteArray())
        return;
    if (draft.isEmpty())
        m_settings->remove(key);
    else
        m_settings->setValue(key, draft);
    m_settings->sync(); // the lid may be closed at any moment
}

} // namespace bothways::app
