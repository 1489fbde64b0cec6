// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/document/rehearsal.h"

#include "app/desktop/document/paths.h"
#include "app/desktop/document/study_files.h"
#include "app/desktop/document/written_files.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <array>

namespace bothways::app {
namespace {

constexpr double kFaster = 20.0;
constexpr double kRest_s = 400.0; // between two runs: time to turn, and to type at this speed
constexpr double kStep_s = 0.25;  // as the recordings have it

/// The columns of the drive, and what each reads while the car stands between two runs.
struct Column {
    const char* name;
    double standing;
};
constexpr std::array kColumns{
    Column{"road_speed_kmh", 0.0}, Column{"fuel_rate_l_per_h", 0.8}, Column{"accessory_w", 900.0},
    Column{"wind_ms", 0.8},        Column{"battery_v", 14.1},        Column{"output_w", 0.0},
    Column{"rotor_rpm", 0.0},      Column{"generator_rpm", 0.0},     Column{"setting", 8.0},
    Column{"setting_set", 8.0},    Column{"vibration_ms2", 0.2}};

QByteArray header()
{
    QByteArray line = "time_s";
    for (const Column& column : kColumns)
        line += QByteArray(",") + column.name;
    return line + '\n';
}

/// One of the demo's recordings, from `at_s` on; gives where it ends.
double append(QByteArray& drive, const QString& file, double at_s)
{
    QFile recording(file);
    if (!recording.open(QIODevice::ReadOnly))
        return at_s;
    const QList<QByteArray> names = recording.readLine().trimmed().split(',');
    double first_s = 0.0;
    double now_s = at_s;
    bool begun = false;
    while (!recording.atEnd()) {
        const QList<QByteArray> cells = recording.readLine().trimmed().split(',');
        if (cells.size() < 2)
            continue;
        const double time_s = cells.front().toDouble();
        first_s = begun ? first_s : time_s;
        begun = true;
        now_s = at_s + time_s - first_s;
        drive += QByteArray::number(now_s, 'f', 2);
        for (const Column& column : kColumns) {
            const auto place = names.indexOf(column.name);
            drive += ',';
            // What this run has not is read all the same: the device stands still.
            drive += place >= 0 && place < cells.size()
                         ? cells[place]
                         : QByteArray::number(column.standing, 'f', 1);
        }
        drive += '\n';
    }
    return now_s;
}

double appendRest(QByteArray& drive, double at_s)
{
    double now_s = at_s;
    while (now_s < at_s + kRest_s) {
        now_s += kStep_s;
        drive += QByteArray::number(now_s, 'f', 2);
        for (const Column& column : kColumns)
            drive += ',' + QByteArray::number(column.standing, 'f', 1);
        drive += '\n';
    }
    return now_s;
}

} // namespace

core::Result<Rehearsal> makeRehearsal()
{
    Rehearsal rehearsal{makeDemoStudy("rehearsal"), {}};
    if (!rehearsal.study)
        return rehearsal.study.error();
    QByteArray drive = header();
    double at_s = appendRest(drive, 0.0);
    const QDir recordings(":/demo/levee_generator_traces");
    for (const QString& name : recordings.entryList({"*.csv"}, QDir::Files, QDir::Name))
        at_s = appendRest(drive, append(drive, recordings.filePath(name), at_s + kStep_s));
    const QString file =
        QFileInfo(rehearsal.study.value()->path()).dir().filePath("rehearsal_drive.csv");
    QFile::remove(file);
    if (const core::Outcome written = writeFile(file, drive); !written)
        return written.error();
    storage::Instrument drivePlayed;
    drivePlayed.name = "drive";
    drivePlayed.kind = storage::InstrumentKind::replay;
    drivePlayed.address = "file:" + toPath(file).string();
    drivePlayed.speed = kFaster;
    rehearsal.rig.name = "rehearsal";
    rehearsal.rig.instruments.push_back(drivePlayed);
    return rehearsal;
}

} // namespace bothways::app
