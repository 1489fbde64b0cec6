// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/watch/rig_store.h"

#include "app/desktop/document/paths.h"
#include "storage/instruments/rigs.h"

#include <QFile>

namespace bothways::app {
namespace {

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

QStringList RigStore::names() const
{
    QStringList names;
    for (const std::string& name : storage::rigNames(storage::rigsFolder()))
        names += QString::fromStdString(name);
    return names;
}

core::Result<storage::Rig> RigStore::read(const QString& name) const
{
    const auto file = storage::rigFile(storage::rigsFolder(), name.toStdString());
    if (!file)
        return file.error();
    return storage::readRig(file.value());
}

core::Outcome RigStore::write(const storage::Rig& rig) const
{
    const auto file = storage::rigFile(storage::rigsFolder(), rig.name);
    if (!file)
        return file.error();
    return storage::saveRig(file.value(), rig, true);
}

bool RigStore::remove(const QString& name) const
{
    const auto file = storage::rigFile(storage::rigsFolder(), name.toStdString());
    return file && QFile::remove(fromPath(file.value()));
}

QStringList portsThere(storage::InstrumentKind kind, const QString& folder)
{
    QStringList ports;
    if (kind == storage::InstrumentKind::replay)
        return ports;
    for (const storage::SerialPortName& port : storage::serialPorts(toPath(folder)))
        ports +=
            QString("serial:%1,%2").arg(QString::fromStdString(port.path)).arg(usualBaud(kind));
    return ports;
}

} // namespace bothways::app
