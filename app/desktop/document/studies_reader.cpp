// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/document/studies_reader.h"

#include "app/answer/input.h"
#include "app/desktop/document/paths.h"

#include <QtConcurrent/QtConcurrentRun>

#include <utility>

namespace bothways::app {
namespace {

ReadStudy readOne(const QString& file, const QDate& today, const std::stop_token& stop)
{
    ReadStudy study;
    study.file = file;
    InputOptions options;
    options.today = today.toString(Qt::ISODate).toStdString();
    options.stop = stop;
    const auto input = readInput(toPath(file), options);
    if (!input) {
        study.error = input.error();
        return study;
    }
    study.name = QString::fromStdString(input.value().name());
    study.given = givenStudy(input.value());
    const auto answer = answerTo(input.value(), stop);
    if (answer)
        study.result = answer.value();
    else
        study.error = answer.error();
    return study;
}

} // namespace

StudiesReader::StudiesReader(QObject* parent) : QObject(parent)
{
    connect(&m_watcher, &QFutureWatcherBase::finished, this, &StudiesReader::finished);
}

StudiesReader::~StudiesReader()
{
    disconnect(&m_watcher, nullptr, this, nullptr);
    m_stop.request_stop();
    m_watcher.waitForFinished();
}

void StudiesReader::read(const QStringList& files, const QDate& today)
{
    m_today = today;
    m_waiting += files;
    if (!m_busy && !m_waiting.isEmpty())
        start();
}

void StudiesReader::start()
{
    m_busy = true;
    m_watcher.setFuture(QtConcurrent::run(
        [files = std::exchange(m_waiting, {}), today = m_today, stop = m_stop.get_token()] {
            std::vector<ReadStudy> studies;
            for (const QString& file : files) {
                if (stop.stop_requested())
                    break;
                studies.push_back(readOne(file, today, stop));
            }
            return studies;
        }));
}

void StudiesReader::finished()
{
    emit done(m_watcher.result());
    if (m_waiting.isEmpty())
        m_busy = false;
    else
        start();
}

} // namespace bothways::app
