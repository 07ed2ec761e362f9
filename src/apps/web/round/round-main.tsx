import '../style/round.css'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { keepPages } from '../offline/keep-pages.ts'
import { DefectNote } from '../page/defect-note.tsx'
import { RoundApp } from './round-app.tsx'

/** The page for the phone: it stands alone, so that nothing of the planner is there while a round counts. */
const place = document.getElementById('round')
if (place !== null)
  createRoot(place).render(
    <StrictMode>
      <DefectNote>
        <RoundApp />
      </DefectNote>
    </StrictMode>,
  )
// A newer version waits for the next time the page is opened: nobody is asked in the middle of a round.
keepPages(() => {}).catch(() => {})
