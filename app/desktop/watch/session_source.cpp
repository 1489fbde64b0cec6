// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/watch/session_source.h"

namespace bothways::app {
namespace {

class SessionSource final : public LiveSource {
public:
    explicit SessionSource(std::unique_ptr<LiveSession> session) : m_session(std::move(session)) {}
    LiveSnapshot snapshot() const override { return m_session->snapshot(); }
    double clock_s() const override { return m_session->clock_s(); }
    core::Instant first() const override { return m_session->first(); }
    void begin(const core::RunUnderWay& run) override { m_session->begin(run); }
    void mark(double at_s, const std::string& word, const std::string& words) override
    {
        m_session->mark(at_s, word, words);
    }
    void end(double at_s) override { m_session->end(at_s); }
    void forget() override { m_session->forget(); }
    std::vector<core::FoundBound> takeFound() override { return m_session->takeFound(); }
    void setStudy(core::Study study) override { m_session->setStudy(std::move(study)); }
    std::optional<core::RecordingId> recording() const override { return m_session->recording(); }
    core::Outcome stop() override { return m_session->stop(); }

private:
    std::unique_ptr<LiveSession> m_session;
};

} // namespace

LiveStarter sessionStarter()
{
    return [](storage::StudyFile connection, const storage::Rig& rig, const core::Instant& first,
              const std::string& name) -> core::Result<std::unique_ptr<LiveSource>> {
        auto session = LiveSession::start(std::move(connection), rig, first, name);
        if (!session)
            return session.error();
        return std::unique_ptr<LiveSource>(
            std::make_unique<SessionSource>(std::move(session).take()));
    };
}

} // namespace bothways::app
