// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/window/preferences_dialog.h"

#include "app/desktop/look/preferences.h"
#include "app/desktop/look/said.h"
#include "app/desktop/watch/alarm_sounds.h"
#include "app/wording/alarms.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QDir>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QSlider>

namespace bothways::app {
namespace {

/// A box of choices, each with its value; `chosen` hears of a change.
template <class Value, class Chosen>
QComboBox* addChoice(QFormLayout& form, const QString& label, const char* objectName,
                     const std::vector<std::pair<QString, Value>>& choices, Value now,
                     Chosen chosen)
{
    auto* box = new QComboBox;
    box->setObjectName(objectName);
    box->setAccessibleName(label);
    for (std::size_t i = 0; i < choices.size(); ++i) {
        box->addItem(choices[i].first);
        if (choices[i].second == now)
            box->setCurrentIndex(static_cast<int>(i));
    }
    form.addRow(label, box);
    QObject::connect(box, &QComboBox::currentIndexChanged, box, [choices, chosen](int index) {
        chosen(choices[static_cast<std::size_t>(index)].second);
    });
    return box;
}

/// The languages that there is a translation for, each in its own words.
std::vector<std::pair<QString, QString>> languages()
{
    std::vector<std::pair<QString, QString>> all{
        {PreferencesDialog::tr("As the system"), QString()}};
    for (const QString& file : QDir(":/translations").entryList({"bothways_*.qm"})) {
        const QString code = file.section(u'_', 1).section(u'.', 0, 0);
        const QLocale locale(code);
        const QString name =
            locale.language() == QLocale::English ? "English" : locale.nativeLanguageName();
        all.emplace_back(name.left(1).toUpper() + name.mid(1), code);
    }
    return all;
}

/// How loud a recording's alarms are, to be set before the drive; all three can be heard.
QHBoxLayout* volumeRow(Preferences& preferences, QWidget& dialog)
{
    auto* row = new QHBoxLayout;
    auto* volume = new QSlider(Qt::Horizontal, &dialog);
    volume->setObjectName("alarmVolume");
    volume->setAccessibleName(PreferencesDialog::tr("Volume of alarms"));
    volume->setRange(0, 100);
    volume->setPageStep(10);
    volume->setValue(preferences.alarmVolume());
    QObject::connect(volume, &QSlider::valueChanged, volume,
                     [&preferences](int value) { preferences.setAlarmVolume(value); });
    row->addWidget(volume, 1);
    auto* sounds = new AlarmSounds(&dialog);
    for (const core::AlarmLevel level :
         {core::AlarmLevel::note, core::AlarmLevel::warning, core::AlarmLevel::spoiled}) {
        const std::string name = wording::alarmLevelName(preferences.spoken(), level);
        auto* hear = new QPushButton(withCapital(shown(name)), &dialog);
        hear->setAutoDefault(false);
        hear->setToolTip(PreferencesDialog::tr("Hear it"));
        QObject::connect(hear, &QPushButton::clicked, sounds, [sounds, &preferences, level] {
            sounds->play(level, preferences.alarmVolume());
        });
        row->addWidget(hear);
    }
    return row;
}

} // namespace

PreferencesDialog::PreferencesDialog(Preferences& preferences, QWidget* parent) : QDialog(parent)
{
    setObjectName("preferencesDialog");
    setWindowTitle(tr("Preferences"));
    auto* form = new QFormLayout(this);
    using core::ConsumptionUnit;
    const UnitsShown units = preferences.units();
    std::vector<std::pair<QString, ConsumptionUnit>> shown, entered;
    for (const ConsumptionUnit unit : core::kConsumptionUnits) {
        entered.emplace_back(units.unitText(unit), unit);
        if (!core::needsDistance(unit) && unit != ConsumptionUnit::kwhPer100km)
            shown.emplace_back(units.unitText(unit), unit);
    }
    addChoice(*form, tr("Show consumption in"), "consumptionShown", shown,
              preferences.consumptionUnit(),
              [&](ConsumptionUnit unit) { preferences.setConsumptionUnit(unit); });
    addChoice(*form, tr("Enter consumption in"), "consumptionEntered", entered,
              preferences.entryUnit(),
              [&](ConsumptionUnit unit) { preferences.setEntryUnit(unit); });
    addChoice<DistanceUnit>(
        *form, tr("Distance and speed"), "distanceUnit",
        {{tr("km, km/h"), DistanceUnit::km}, {tr("miles, mph"), DistanceUnit::miles}},
        preferences.distanceUnit(), [&](DistanceUnit unit) { preferences.setDistanceUnit(unit); });
    addChoice<TemperatureUnit>(
        *form, tr("Temperature"), "temperatureUnit",
        {{tr("°C"), TemperatureUnit::celsius}, {tr("°F"), TemperatureUnit::fahrenheit}},
        preferences.temperatureUnit(),
        [&](TemperatureUnit unit) { preferences.setTemperatureUnit(unit); });
    addChoice<ThemeChoice>(*form, tr("Colours"), "theme",
                           {{tr("As the system"), ThemeChoice::system},
                            {tr("Light"), ThemeChoice::light},
                            {tr("Dark"), ThemeChoice::dark}},
                           preferences.theme(),
                           [&](ThemeChoice theme) { preferences.setTheme(theme); });
    addChoice<QString>(*form, tr("Language"), "language", languages(), preferences.language(),
                       [&](const QString& language) { preferences.setLanguage(language); });
    auto* large = new QCheckBox(tr("Large text"), this);
    large->setObjectName("largeText");
    large->setChecked(preferences.largeText());
    form->addRow(QString(), large);
    connect(large, &QCheckBox::toggled, this,
            [&](bool checked) { preferences.setLargeText(checked); });
    form->addRow(tr("Volume of alarms"), volumeRow(preferences, *this));
    auto* note = new QLabel(tr("Units change what is shown, never what is stored. The language "
                               "changes with the next start."),
                            this);
    note->setWordWrap(true);
    form->addRow(note);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    form->addRow(buttons);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::close);
}

} // namespace bothways::app
