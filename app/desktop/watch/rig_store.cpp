// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/watch/rig_store.h"

#include "app/desktop/document/paths.h"

#include <QDir>
#include <QFile>
#include <QStandardPaths>
#include <QUrl>

namespace bothways::app {
namespace {

constexpr const char* kRigEnding = ".json";

/// What is usual for each kind: boards print at 115200, NMEA 0183 says 4800, adapters for the
/// diagnostic socket 38400, meters 9600.
int usualBaud(storage::InstrumentKind kind)
{
    switch (kind) {
    case storage::InstrumentKind::nmea: return 4800;
    case storage::InstrumentKind::modbus: return 9600;
    case storage::InstrumentKind::obd: return 38'400;
    case storage::InstrumentKind::lines:
    case storage::InstrumentKind::replay: break;
    }
    return 115'200;
}

} // namespace

RigStore::RigStore(QString folder) : m_folder(std::move(folder)) {}

QString RigStore::usualFolder()
{
    return QDir(QStandardPaths::writableLocation(QStandardPaths::AppConfigLocation))
        .filePath("rigs");
}

QString RigStore::file(const QString& name) const
{
    // A name may hold a slash; a file's may not.
    const QByteArray safe = QUrl::toPercentEncoding(name, " ()+");
    return QDir(m_folder).filePath(QString::fromLatin1(safe) + kRigEnding);
}

QStringList RigStore::names() const
{
    QStringList names;
    const QDir folder(m_folder);
    for (const QString& entry : folder.entryList({QString("*") + kRigEnding}, QDir::Files))
        names += QUrl::fromPercentEncoding(entry.chopped(qstrlen(kRigEnding)).toLatin1());
    names.sort(Qt::CaseInsensitive);
    return names;
}

core::Result<storage::Rig> RigStore::read(const QString& name) const
{
    return storage::readRig(toPath(file(name)));
}

core::Outcome RigStore::write(const storage::Rig& rig) const
{
    QDir().mkpath(m_folder);
    return storage::writeRig(toPath(file(QString::fromStdString(rig.name))), rig, true);
}

bool RigStore::remove(const QString& name) const
{
    return QFile::remove(file(name));
}

QStringList portsThere(storage::InstrumentKind kind, const QString& folder)
{
    QStringList ports;
    if (kind == storage::InstrumentKind::replay)
        return ports;
    const QDir devices(folder);
    for (const QString& name : devices.entryList({"ttyUSB*", "ttyACM*", "rfcomm*"},
                                                 QDir::System | QDir::Files, QDir::Name))
        ports += QString("serial:%1,%2").arg(devices.filePath(name)).arg(usualBaud(kind));
    return ports;
}

} // namespace bothways::app
